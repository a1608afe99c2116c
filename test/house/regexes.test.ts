import { expect, test } from 'vitest'
import { type Node, placeOf, readServer } from './sources.ts'

interface Found {
  readonly place: string
  readonly regex: RegExp
}

const OUTER = ['lsp', 'cli']
/** Not linear, and short by construction. */
const BOUNDED = new Map([
  // The digits behind the point of a whole number of nanometres: nine at most.
  ['/0+$/', 'server/src/units/print.ts'],
])
/** Sizes up to 1 MB: doubling is plain at the first, a square at the second; neither is let run on. */
const SIZES = [25, 8_000, 80_000, 1_000_000]
/** A linear scan of 1 MB takes some milliseconds. */
const SLOWEST_MS = [40, 60, 200, 900]

/** What a text may be filled with: blanks, digits, marks, letters, and what the regex itself names. */
function fillings({ source }: RegExp): string[] {
  const own = [...new Set(source.replace(/\\[a-zA-Z]|[\\()[\]{}?*+|^$]/g, ''))]
  const plain = [
    ' ',
    '0',
    'a',
    '\t',
    "'",
    '"',
    '-',
    ' 1',
    '1/',
    'a ',
    '1,',
    '\u00a0',
    'é',
    '1.',
    "1' ",
    'a-',
  ]
  return [...new Set([...plain, ...own])]
}

/** The slowest reading of any filling, ended so that nothing fits at the end. */
function slowest(regex: RegExp, size: number): { readonly ms: number; readonly filling: string } {
  const times = fillings(regex).map((filling) => {
    const text = `${filling.repeat(Math.ceil(size / filling.length))}\u0001`
    const started = performance.now()
    if (regex.global) for (const _ of text.matchAll(regex));
    else regex.test(text)
    return { ms: performance.now() - started, filling }
  })
  return times.reduce((a, b) => (b.ms > a.ms ? b : a))
}

/** Measured again where it looks slow: a busy machine pauses a scan, but not three times. */
function unhurried(regex: RegExp, size: number, limit: number) {
  let best = slowest(regex, size)
  for (let again = 0; again < 2 && best.ms > limit; again++) {
    const next = slowest(regex, size)
    if (next.ms < best.ms) best = next
  }
  return best
}

function fault({ place, regex }: Found): string | null {
  for (const [i, size] of SIZES.entries()) {
    const { ms, filling } = unhurried(regex, size, SLOWEST_MS[i]!)
    if (ms > SLOWEST_MS[i]!) {
      return `${place} ${regex} takes ${Math.round(ms)} ms on ${size} times ${JSON.stringify(filling)}`
    }
  }
  return null
}

function regexesOf(source: ReturnType<typeof readServer>[number]): Found[] {
  return source.nodes.flatMap((node: Node) => {
    const literal = node.regex as { readonly pattern: string; readonly flags: string } | undefined
    if (node.type !== 'Literal' || literal === undefined) return []
    return [{ place: placeOf(source, node), regex: new RegExp(literal.pattern, literal.flags) }]
  })
}

const found = readServer()
  .filter(({ folder }) => !OUTER.includes(folder))
  .flatMap(regexesOf)
  .filter(({ place, regex }) => BOUNDED.get(`${regex}`) !== place.split(':')[0])

test('the scan finds the regexes that there are', () => {
  expect(found.length).toBeGreaterThan(3)
})

test('a regex that is not linear would be found', () => {
  expect(fault({ place: 'here', regex: /\s+$/ })).toMatch(/^here/)
  expect(fault({ place: 'here', regex: /^(a+)+$/ })).toMatch(/^here/)
  expect(fault({ place: 'here', regex: /^\s*(\d+)\s*$/ })).toBeNull()
})

test('every regex that reads text is linear to 1 MB', { timeout: 120_000 }, () => {
  expect(found.map(fault).filter((why) => why !== null)).toEqual([])
})
