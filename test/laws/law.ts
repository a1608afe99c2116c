import { createHash } from 'node:crypto'
import { compile } from '../../server/src/compile.ts'
import type { Compiled } from '../../server/src/report/compiled.ts'
import { type Dice, dice } from '../generate/dice.ts'
import { remembered, smallJob } from './jobs.ts'
import type { Changed, Texts } from './transform/texts.ts'

/**
 * A law of the whole product: a job is changed in a way that must not matter, or must matter in a
 * known way, and both are computed. No number is known beforehand, so no number can be known wrongly.
 */
export interface Law {
  /** The name that the table and the tests have for it. */
  readonly name: string
  /** What is changed. */
  readonly change: string
  /** What must stay, or how it must move. */
  readonly stays: string
  readonly compared: 'byte for byte' | 'values'
  /** The job changed; null where it has nothing that could be. */
  readonly changed: (job: Texts, dice: Dice) => Changed | null
  /** What is held against what: the same text, unless `holds` says otherwise. */
  readonly view: (compiled: Compiled) => string
  /** Null where the law holds, else what is wrong, in words. Default: both views are the same. */
  readonly holds?: (before: string, after: string) => string | null
  /** Jobs by seed; a small one unless the law needs others. */
  readonly jobs?: (seed: number) => Texts
}

/** So many seeds for each job that a law can change: beyond that it says nothing of ordinary jobs. */
const MOST_SEEDS = 12

export interface Held {
  readonly jobs: number
  readonly seeds: number
  readonly broken: readonly string[]
}

/** Holds a law on so many jobs that it can change. */
export function held(law: Law, wanted: number): Held {
  const broken: string[] = []
  let jobs = 0
  let seed = 0
  for (; jobs < wanted && seed < wanted * MOST_SEEDS; seed += 1) {
    const job = jobOf(law, seed)
    const changed = law.changed(job, dice(seed))
    if (changed === null) continue
    jobs += 1
    const wrong = isHeld(law, seed, job, changed)
    if (wrong !== null) broken.push(`seed ${seed}: ${wrong}`)
  }
  return { jobs, seeds: seed, broken }
}

/** By the draw: laws that look at the same jobs have them drawn once. */
const DRAWN = new Map<Draw, Draw>()

type Draw = (seed: number) => Texts

function jobOf({ jobs = smallJob }: Law, seed: number): Texts {
  const draw = DRAWN.get(jobs) ?? remembered(jobs)
  DRAWN.set(jobs, draw)
  return draw(seed)
}

function isHeld(law: Law, seed: number, job: Texts, changed: Changed): string | null {
  const after = (changed.back ?? same)(law.view(compiled(changed)))
  if (law.holds !== undefined) return law.holds(law.view(compiled(job)), after)
  const key = `${seed} ${(law.jobs ?? smallJob).name} ${law.view.name}`
  const digest = DIGESTS.get(key) ?? digestOf(law.view(compiled(job)))
  DIGESTS.set(key, digest)
  if (digestOf(after) === digest) return null
  return firstDifference(law.view(compiled(job)), after)
}

const same = (output: string) => output

/** Of the views of jobs as they are, for the next law that looks at the same one. */
const DIGESTS = new Map<string, string>()

function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('base64')
}

export function compiled({ files, root }: Texts): Compiled {
  const result = compile(files, root)
  if ('missing' in result) throw new Error(`not among the files: ${result.missing.join(', ')}`)
  return result
}

/** The first line in which two texts differ, as people read differences. */
export function firstDifference(before: string, after: string): string {
  const [one, other] = [before.split('\n'), after.split('\n')]
  const at = one.findIndex((line, i) => line !== other[i])
  const line = at < 0 ? one.length : at
  return `line ${line + 1}\n  was ${one[line]?.trim()}\n  is  ${other[line]?.trim()}`
}
