import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Survey } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { dice } from '../generate/dice.ts'
import { type RandomJob, randomJob, rightAngledJob } from '../generate/job.ts'
import { entriesOf, treeOf } from './transform/edit.ts'
import { oneFile, type Texts } from './transform/texts.ts'

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

/**
 * Square rooms whose readings all come round exactly, so that nothing is adjusted and nothing rounded,
 * and which doorways tie to each other: how rooms lie that nothing ties, no text can say.
 */
export function exactJob(seed: number): Texts {
  return drawn(
    seed,
    rightAngledJob,
    (job) => isExact(job) && isTied(surveyOf(job)) && isUnadjusted(surveyOf(job)),
  )
}

/** Such rooms, more than one, and no way round through them: the order they are told in says nothing. */
export function roomsInARow(seed: number): Texts {
  return drawn(seed, rightAngledJob, (job) => {
    if (!isExact(job) || count(job.files, 'room') < 2) return false
    const surveyed = surveyOf(job)
    return isTied(surveyed) && isUnadjusted(surveyed) && surveyed.loops.length === 0
  })
}

/** Anything, sound, its rooms tied to each other. */
export function soundJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    (job) => job.sound && feetOfWall(job.files) < MIDDLING && isTied(surveyOf(job)),
  )
}

/** One rectangular room and a plank whose fractions fall on the marks of a tape, nothing left to habit. */
export function rectangleJob(seed: number): Texts {
  const { between, pick } = dice(seed)
  const [wide, deep] = [between(60, 300), between(60, 300)]
  const length = pick([30, 37.5, 45, 52.5, 60])
  const text = `floorscribe 1
job Rectangle ${seed}
tape 1/16" + 1/32" per 10', about 1/2", touching wall
base 1/2" thick, kept

product larch
  plank       ${pick([3, 5, 7, 9])}" x ${length}"
  box         ${between(4, 16)} planks
  joints      ${between(4, 12)}" stagger, ${between(6, 12)}" shortest end, ${between(1, 2)}" narrowest rip
  gap         ${pick(['1/4"', '3/8"', '1/2"'])}
  run         2000' long, 2000' wide, through doorways
  laid        ${pick(['left to right', 'right to left', 'either way'])}
  cut         1/8" kerf, 1/4" to spare
  spoil       2 planks

room den
  north       ${wide}"
  east        ${deep}"
  south       ${wide}"
  west        ${deep}"

floor ground
  rooms       den
  lay         larch, running ${pick(['east-west', 'north-south'])}
`
  return oneFile(text)
}

function isExact({ sound, features, files }: RandomJob): boolean {
  return sound && !features.includes('readings: off by a step') && feetOfWall(files) < MIDDLING
}

/** Sixteenths of an inch and millimetres are whole multiples of it; an adjusted length hardly ever is. */
const MARK = 12_500

/** Whether the corners lie as the readings have them. */
function isUnadjusted({ rooms }: Survey): boolean {
  return rooms.every(({ corners }) =>
    corners.every(
      ({ x, y }) => (x - corners[0]!.x) % MARK === 0 && (y - corners[0]!.y) % MARK === 0,
    ),
  )
}

function isTied({ rooms }: Survey): boolean {
  return rooms.every(({ network }) => network === 0)
}

function surveyOf({ files, root }: Texts): Survey {
  const { trees } = reach(
    [...files].map(([path, text]) => parse(path, text)),
    root,
  )
  return survey(bind(trees, root).job)
}

/** A small job in which some name has an apostrophe. */
export function apostropheJob(seed: number): Texts {
  return drawn(
    seed,
    randomJob,
    ({ files }) =>
      [...files.values()].some((text) => /[a-z]'/i.test(text)) && feetOfWall(files) < SMALL,
  )
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
