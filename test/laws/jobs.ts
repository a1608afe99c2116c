import { randomJob, rightAngledJob } from '../generate/job.ts'
import { entriesOf, treeOf } from './transform/edit.ts'
import type { Texts } from './transform/texts.ts'

const FOOT = 304_800_000
/** Feet of wall in a small job. */
const SMALL = 110
/** From one draw for a seed to the next: beyond any seed that the laws begin with. */
const NEXT_DRAW = 1_000_003

/**
 * Anything that the language has, in at most some hundred feet of wall: for laws about words, where the
 * size of a floor tells nothing and costs most.
 */
export function smallJob(seed: number): Texts {
  return drawn(seed, randomJob, ({ text }) => feetOfWall(text) < SMALL)
}

/** Square rooms whose readings all come round exactly: nothing is adjusted, so nothing is rounded. */
export function exactJob(seed: number): Texts {
  return drawn(
    seed,
    rightAngledJob,
    ({ sound, features, text }) =>
      sound && features.includes('readings: true to a sixteenth') && feetOfWall(text) < 2 * SMALL,
  )
}

/** Square rooms, sound, of any size; readings may disagree by a sixteenth or two. */
export function squareJob(seed: number): Texts {
  return drawn(seed, rightAngledJob, ({ sound, text }) => sound && feetOfWall(text) < 2 * SMALL)
}

/** Anything, sound. */
export function soundJob(seed: number): Texts {
  return drawn(seed, randomJob, ({ sound, text }) => sound && feetOfWall(text) < 2 * SMALL)
}

/** Floors with a product each, or two of one product. */
export function severalFloorsJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ text }) => count(text, 'floor') > 1 && feetOfWall(text) < 2 * SMALL,
  )
}

export function severalProductsJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ text }) => count(text, 'product') > 1 && feetOfWall(text) < 2 * SMALL,
  )
}

/** Rooms that doorways tie to each other. */
export function severalRoomsJob(seed: number): Texts {
  return drawn(seed, rightAngledJob, (job) => {
    const isSound = job.sound && count(job.text, 'room') > 1
    return isSound && feetOfWall(job.text) < 2 * SMALL
  })
}

function count(text: string, word: string): number {
  return text.split(`\n${word} `).length - 1
}

function drawn<T>(seed: number, draw: (seed: number) => T, fits: (job: T) => boolean): T {
  for (let next = seed; ; next += NEXT_DRAW) {
    const job = draw(next)
    if (fits(job)) return job
  }
}

const WALL = /^((north|south)(-east|-west)?|east|west|slant)$/

function feetOfWall(text: string): number {
  const walls = entriesOf(treeOf(text)).filter(({ word }) => WALL.test(word))
  const lengths = walls.map(({ phrases }) => phrases[0]?.measures[0]?.figure)
  return (
    lengths.reduce((sum, figure) => sum + (figure?.kind === 'length' ? figure.nm : 0), 0) / FOOT
  )
}
