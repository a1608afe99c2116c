/**
 * A core as it must not be: it tells its zone, its locale, the clock, an inexact function, what it did
 * before, the order of its texts and its folder. The test proves on it that each of these is found.
 */
let before = 0

interface Gossip {
  readonly paths: string
}

export function compile(
  texts: ReadonlyMap<string, string>,
): Gossip | { readonly missing: readonly string[] } {
  return texts.has('b') ? { paths: [...texts.keys()].join() } : { missing: ['b'] }
}

export function outputs({ paths }: Gossip): ReadonlyMap<string, string> {
  return new Map([
    ['zone', `the day\nbegins at ${new Date(2026, 0, 1).toISOString()}`],
    ['locale', (1234.5).toLocaleString()],
    ['clock', String(new Date().getUTCFullYear())],
    ['sine', String(Math.sin(1))],
    ['memory', String(before++)],
    ['texts', paths],
    ['folder', process.cwd().split('/').slice(-1).join()],
  ])
}
