import type { Draw } from './draw.ts'
import type { Room } from './house.ts'
import { type Hand, written } from './notation.ts'
import type { WallWords } from './wall-words.ts'

/** One room on the way to its text: how it is written, and how its readings depart from its true lengths. */
export interface Sheet {
  readonly room: Room
  readonly words: readonly WallWords[]
  readonly hand: Hand
  readonly draw: Draw
  /** Readings may be a step long or short. */
  readonly isLoose: boolean
  /** Lines may be doubted: marked about, worth something of their own, to be taken again. */
  readonly isDoubted: boolean
}

/** A length that was not read with doubt. */
export function plain(sheet: Sheet, steps: number): string {
  return written(steps, sheet.hand, sheet.draw)
}

/** A reading of a true length, off by a step and marked as doubtful by chance. */
export function reading(sheet: Sheet, steps: number): string {
  const { dice, grid, has } = sheet.draw
  const off = sheet.isLoose && steps > 2 ? dice.between(-1, 1) : 0
  const said = plain(sheet, steps + off)
  if (!sheet.isDoubted || !dice.chance(8)) return said
  const doubt = dice.pick(['about', 'within', 'again'] as const)
  has(`reading: ${doubt === 'again' ? 'to be taken again' : doubt}`)
  if (doubt === 'about') return `about ${said}`
  if (doubt === 'again') return `${said}?`
  return `${said} within ${plain(sheet, Math.round(grid.inch / dice.pick([2, 4, 8])))}`
}

/** A line of a room as the formatter has it; phrases may stand in any order. */
export function line(depth: 1 | 2, word: string, phrases: readonly string[], draw: Draw): string {
  const head = `${'  '.repeat(depth)}${word}`
  const isTurned = draw.nasty && phrases.length > 1 && draw.dice.chance(15)
  if (isTurned) draw.has('phrases: in another order')
  return `${head.padEnd(13)} ${(isTurned ? phrases.toReversed() : phrases).join(', ')}`
}

/** The straight way of a displacement along one axis. */
export function waysOf(sheet: Sheet, { east, north }: WallWords): readonly string[] {
  return [
    `${plain(sheet, Math.abs(east))} ${east > 0 ? 'east' : 'west'}`,
    `${plain(sheet, Math.abs(north))} ${north > 0 ? 'north' : 'south'}`,
  ]
}
