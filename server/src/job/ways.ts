import type { Way } from './job.ts'

/** The eight ways, clockwise from north, an eighth of a turn apart. */
export const WAYS: readonly Way[] = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]

export function isWay(word: string): word is Way {
  return (WAYS as readonly string[]).includes(word)
}

/** Eighths of a turn clockwise from north. */
export function eighths(way: Way): number {
  return WAYS.indexOf(way)
}

/** The words that open a wall's line. */
export function isWallWord(word: string): boolean {
  return word === 'slant' || isWay(word)
}
