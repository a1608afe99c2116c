import { randomJob, rightAngledJob } from '../generate/job.ts'
import { entriesOf, treeOf } from './transform/edit.ts'
import type { Texts } from './transform/texts.ts'

const FOOT = 304_800_000
/** Feet of wall in a small job, in each tenth of them, and in a job for laws about floors. */
const SMALL = 60
const TENTH = 110
const MIDDLING = 220
/** From one draw for a seed to the next: beyond any seed that the laws begin with. */
const NEXT_DRAW = 1_000_003

/**
 * Anything that the language has, in few feet of wall: for laws about words, where the
 * size of a floor tells nothing and costs most.
 */
export function smallJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ files }) => feetOfWall(files) < (seed % 10 === 9 ? TENTH : SMALL),
  )
}

/** Square rooms whose readings all come round exactly: nothing is adjusted, so nothing is rounded. */
export function exactJob(seed: number): Texts {
  return drawn(
    seed,
    rightAngledJob,
    ({ sound, features, files }) =>
      sound && !features.includes('readings: off by a step') && feetOfWall(files) < MIDDLING,
  )
}

/** Square rooms, sound, of any size; readings may disagree by a sixteenth or two. */
export function squareJob(seed: number): Texts {
  return drawn(seed, rightAngledJob, ({ sound, files }) => sound && feetOfWall(files) < MIDDLING)
}

/** Anything, sound. */
export function soundJob(seed: number): Texts {
  return drawn(seed, randomJob, ({ sound, files }) => sound && feetOfWall(files) < MIDDLING)
}

/** Floors with a product each, or two of one product. */
export function severalFloorsJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ files }) => count(files, 'floor') > 1 && feetOfWall(files) < MIDDLING,
  )
}

export function severalProductsJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ files }) => count(files, 'product') > 1 && feetOfWall(files) < MIDDLING,
  )
}

/** Rooms that doorways tie to each other. */
export function severalRoomsJob(seed: number): Texts {
  return drawn(seed, rightAngledJob, (job) => {
    const isSound = job.sound && count(job.files, 'room') > 1
    return isSound && feetOfWall(job.files) < MIDDLING
  })
}

function count(files: Texts['files'], word: string): number {
  return entriesIn(files).filter((entry) => entry.word === word).length
}

/** Draws for a seed until the job fits. */
function drawn<T extends Texts>(
  seed: number,
  draw: (seed: number) => T,
  fits: (job: T) => boolean,
): Texts {
  for (let next = seed; ; next += NEXT_DRAW) {
    const job = draw(next)
    if (fits(job)) return plainly(job)
  }
}

/** The job in lines that end with '\\n' and nothing before its first word, so that changes are simple. */
function plainly({ files, root }: Texts): Texts {
  const plain = [...files].map(
    ([path, text]) => [path, text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')] as const,
  )
  return { root, files: new Map(plain) }
}

/** The same jobs, each drawn once. */
export function remembered(draw: (seed: number) => Texts): (seed: number) => Texts {
  const known = new Map<number, Texts>()
  return (seed) => {
    const job = known.get(seed) ?? draw(seed)
    known.set(seed, job)
    return job
  }
}

const WALL = /^((north|south)(-east|-west)?|east|west|slant)$/

function feetOfWall(files: Texts['files']): number {
  const walls = entriesIn(files).filter(({ word }) => WALL.test(word))
  const figures = walls.flatMap(({ phrases }) => {
    const length = phrases.find(({ form }) => form === 'LENGTH')
    return length === undefined ? [] : [length.measures[0]!.figure]
  })
  return figures.reduce((sum, one) => sum + (one.kind === 'length' ? one.nm : 0), 0) / FOOT
}

function entriesIn(files: Texts['files']) {
  return [...files.values()].flatMap((text) => entriesOf(treeOf(text)))
}
