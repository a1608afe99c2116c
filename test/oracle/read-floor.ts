import type { Floor, Kind, Place } from './job.ts'
import { readLength } from './lengths.ts'
import { type Block, type Line, nameKey } from './lines.ts'
import { type Bare, firstOf, lengthSaid, nameSaid, pairOf } from './phrases.ts'

export const KINDS: readonly Kind[] = [
  'base kept',
  'base off and back',
  'base new',
  'no base',
  'tub',
  'hearth',
  'slider',
  'cabinet',
  'nosing',
  'open edge',
  'carpet',
]

export function readFloor({ head, lines }: Block, bare: Bare): Floor {
  const of = (word: string) => lines.filter((line) => line.word === word)
  const phrases = (word: string) => of(word).flatMap((line) => line.phrases)
  const [lay = []] = [phrases('lay')]
  return {
    key: nameKey(head.rest),
    rooms: phrases('rooms').map(nameKey),
    product: nameKey(lay.find((phrase) => !/^running /i.test(phrase)) ?? ''),
    running: nameSaid(lay, 'running'),
    start: firstOf(phrases('start'), wallOfRoom),
    shift: firstOf(phrases('shift'), (phrase) => shiftOf(phrase, bare)),
    breaks: of('break').flatMap((line) => placeOf(line) ?? []),
    edges: of('edge').flatMap((line) => {
      const place = placeOf(line)
      const gap = lengthSaid(line.phrases, 'gap', bare)
      return place === null ? [] : [{ ...place, kind: kindSaid(line.phrases), gap }]
    }),
  }
}

export function kindSaid(phrases: readonly string[]): Kind | null {
  const said = phrases.map((phrase) => phrase.toLowerCase())
  return KINDS.find((kind) => said.includes(kind)) ?? null
}

/** `along WALL of ROOM`. */
function wallOfRoom(phrase: string): { wall: string; room: string } | null {
  const pair = pairOf(phrase.replace(/^along /i, ''), 'of')
  return pair === null ? null : { wall: pair[0], room: pair[1] }
}

function shiftOf(phrase: string, bare: Bare): Floor['shift'] {
  const [, said = '', way = ''] = /^(.*) (\S+)$/.exec(phrase) ?? []
  const by = readLength(said, bare)
  return by === null ? null : { by, way: way.toLowerCase() }
}

/** `ROOM to ROOM`, or `WALL of ROOM`. */
function placeOf({ phrases }: Line): Place | null {
  const opening = firstOf(phrases, (phrase) => pairOf(phrase, 'to'))
  if (opening !== null) {
    return { from: opening[0], to: opening[1], called: nameSaid(phrases, 'called') }
  }
  return firstOf(phrases, wallOfRoom)
}
