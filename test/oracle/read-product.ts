import type { Product } from './job.ts'
import { INCH, type Nm, readLength, readNumber } from './lengths.ts'
import { type Block, nameKey } from './lines.ts'
import { type Bare, countOf, firstOf, lengthSaid, percentOf } from './phrases.ts'
import { over, type Ratio, ratio, round, times, total, ZERO } from './ratio.ts'

type Lengths = Product['lengths']

export function readProduct({ head, lines }: Block, bare: Bare): Product {
  const phrases = (word: string) =>
    lines.filter((line) => line.word === word).flatMap((line) => line.phrases)
  const said = (word: string, what: string) => lengthSaid(phrases(word), what, bare)
  const face = faceOf(phrases('plank'), bare)
  const lengths = lengthsOf(phrases('box'), face, bare)
  const kerf = kerfOf(phrases('cut'), bare)
  return {
    key: nameKey(head.rest),
    width: face.width,
    lengths,
    perBox: total(lengths.map(({ perBox }) => perBox)),
    stagger: said('joints', 'stagger') ?? 0n,
    shortestEnd: said('joints', 'shortest end') ?? 0n,
    narrowestRip: said('joints', 'narrowest rip') ?? 2n * INCH,
    gap: firstOf(phrases('gap'), (phrase) => readLength(phrase, bare)) ?? 0n,
    kerfAlong: kerf.along,
    kerfAcross: kerf.across,
    toSpare: said('cut', 'to spare') ?? INCH / 4n,
    laid: phrases('laid')[0]?.toLowerCase() ?? 'left to right',
    longest: { along: said('run', 'long'), across: said('run', 'wide') },
    breaks: breaksOf(phrases('run'), bare),
    spoil: {
      planks: countOf(phrases('spoil'), /^planks?$/i) ?? 0n,
      percent: firstOf(phrases('spoil'), percentOf) ?? ZERO,
    },
    spares: {
      planks: countOf(phrases('spares'), /^planks?$/i) ?? 0n,
      boxes: countOf(phrases('spares'), /^box(es)?$/i) ?? 0n,
    },
  }
}

interface Face {
  readonly width: Nm
  readonly length: Nm | null
}

/** `7" x 48"`, or `7" wide` and perhaps `48" long`. */
function faceOf(phrases: readonly string[], bare: Bare): Face {
  const both = firstOf(phrases, (phrase) => {
    const [width, length] = phrase.split(/ x /i).map((part) => readLength(part, bare))
    return width != null && length != null ? { width, length } : null
  })
  if (both !== null) return both
  return {
    width: lengthSaid(phrases, 'wide', bare) ?? 0n,
    length: lengthSaid(phrases, 'long', bare),
  }
}

/** Planks in a box, by length: `9 planks`, `2 of 24"`, or by area where only that is said. */
function lengthsOf(phrases: readonly string[], face: Face, bare: Bare): Lengths {
  const several = phrases.flatMap((phrase): Lengths => {
    const [, number, said = ''] = /^(\d+) of (.*)$/i.exec(phrase) ?? []
    const length = readLength(said, bare)
    return number === undefined || length === null ? [] : [{ length, perBox: BigInt(number) }]
  })
  if (several.length > 0) return [...several].sort((a, b) => (a.length < b.length ? -1 : 1))
  const length = face.length ?? 0n
  const counted = countOf(phrases, /^planks?$/i)
  return [{ length, perBox: counted ?? byArea(phrases, face.width * length) }]
}

/** The area on the box over that of a plank, to the nearest whole plank. */
function byArea(phrases: readonly string[], plank: bigint): bigint {
  const area = firstOf(phrases, areaOf)
  return area === null ? 0n : round(over(area, ratio(plank)))
}

/** Square nanometres of `21.11 sq ft` or `1.96 sq m`. */
function areaOf(phrase: string): Ratio | null {
  const [, number, unit] = /^([\d.]+) sq (ft|m)$/i.exec(phrase) ?? []
  if (number === undefined || unit === undefined) return null
  const side = unit.toLowerCase() === 'ft' ? 12n * INCH : 10n ** 9n
  return times(readNumber(number), ratio(side * side))
}

/** What a cut takes, along for rips and across for lengths; by the way of cutting where not said. */
function kerfOf(phrases: readonly string[], bare: Bare): { along: Nm; across: Nm } {
  const eighth = INCH / 8n
  const ways = phrases.map((phrase) => phrase.toLowerCase())
  const takesNone = ways.includes('score and snap') || ways.includes('knife')
  const usual = takesNone
    ? { along: 0n, across: 0n }
    : { along: eighth, across: ways.includes('guillotine') ? 0n : eighth }
  const both = lengthSaid(phrases, 'kerf', bare)
  return {
    along: lengthSaid(phrases, 'kerf along', bare) ?? both ?? usual.along,
    across: lengthSaid(phrases, 'kerf across', bare) ?? both ?? usual.across,
  }
}

function breaksOf(phrases: readonly string[], bare: Bare): Product['breaks'] {
  return firstOf(phrases, (phrase) => {
    const [, under] = /^breaks at doorways(?: under (.*))?$/i.exec(phrase) ?? []
    if (!/^breaks at doorways/i.test(phrase)) return null
    return { under: under === undefined ? null : readLength(under, bare) }
  })
}
