import { type Compiled, compile } from '../../server/src/compile.ts'
import type {
  PublishedFloor,
  PublishedLayouts,
  SoftRule,
} from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import type { Mode } from '../generate/draw.ts'
import { type RandomJob, randomJob } from '../generate/job.ts'

export interface Laid {
  readonly job: RandomJob
  readonly result: Compiled
  readonly floors: readonly PublishedFloor[]
}

/** The whole pipeline on one random job. */
export function lay(seed: number, mode: Mode): Laid {
  const job = randomJob(seed, mode)
  const result = compile(job.files, job.root)
  if ('missing' in result) throw new Error(`includes missing: ${result.missing}`)
  return { job, result, floors: result.floors.map((floor) => floor.published) }
}

/** As a file would hold it: what does not survive JSON is no part of a layout. */
export function asFile(...floors: readonly PublishedFloor[]): object {
  const layouts: PublishedLayouts = {
    format: 'floorscribe layout',
    version: 1,
    unit: 'nm',
    job: 'random',
    floors,
  }
  return JSON.parse(JSON.stringify(layouts))
}

/** What came of many jobs of one mode: counts, and whatever must not be; of the jobs only a few floors are kept. */
export class Proof {
  readonly #mode: Mode
  jobs = 0
  /** Floors laid, each proved. */
  proved = 0
  /** Floors of jobs that say they are sound, and those of them that are laid. */
  readonly ofSound = { floors: 0, laid: 0 }
  /** Breaches by rule, and floors that have one. */
  readonly breaches = new Map<SoftRule, { count: number; floors: number }>()
  /** What must not be, each with its seed. */
  readonly faults: string[] = []
  /** Why a floor of a sound job has no layout. */
  readonly notLaid: string[] = []
  /** The first few floors that are neither small nor large. */
  readonly samples: PublishedFloor[] = []

  constructor(mode: Mode) {
    this.#mode = mode
  }

  add({ job, result, floors }: Laid): void {
    this.jobs += 1
    this.proved += floors.length
    for (const { code, text } of verify(asFile(...floors)).faults) this.#fault(job, code, text)
    if (job.sound) this.#addSound(job, result)
    else if (result.exit === 'sound') this.#fault(job, 'comes out sound', job.unsound.join(', '))
    for (const floor of floors) {
      this.#addBreaches(floor)
      this.#keep(floor)
    }
  }

  #keep(floor: PublishedFloor): void {
    const count = floor.pieces.length
    if (count > 20 && count < 200 && this.samples.length < 10) this.samples.push(floor)
  }

  #fault({ seed }: RandomJob, code: string, text: string): void {
    this.faults.push(`${this.#mode} ${seed}: ${code}: ${text}`)
  }

  #addSound(job: RandomJob, { messages, job: { floors }, floors: laid }: Compiled): void {
    const errors = messages.filter(({ weight }) => weight === 'error')
    this.ofSound.floors += floors.length
    this.ofSound.laid += laid.length
    if (laid.length < floors.length) {
      const causes = messages.filter(({ weight }) => weight === 'error' || weight === 'incomplete')
      const texts = causes.map(({ code, text }) => `${code}: ${text}`)
      this.notLaid.push(`${this.#mode} ${job.seed}: ${texts.join(' ')}`)
    } else {
      for (const { code, text } of errors) this.#fault(job, code, text)
    }
  }

  #addBreaches({ breaches }: PublishedFloor): void {
    for (const [rule, some] of Map.groupBy(breaches, ({ rule }) => rule)) {
      const before = this.breaches.get(rule) ?? { count: 0, floors: 0 }
      const { count, floors } = before
      this.breaches.set(rule, { count: count + some.length, floors: floors + 1 })
    }
  }

  /** For people: how many floors were proved, how many are not laid and why, what is breached how often. */
  table(): string {
    const { floors, laid } = this.ofSound
    const rows = [...this.breaches]
      .sort(([, a], [, b]) => b.count - a.count)
      .map(([rule, { count, floors }]) => {
        const share = ((100 * floors) / this.proved).toFixed(1).padStart(5)
        return `  ${rule.padEnd(16)} ${`${count}`.padStart(8)} in ${`${floors}`.padStart(6)} floors, ${share} %`
      })
    return [
      `${this.#mode}: ${this.jobs} jobs, ${this.proved} floors laid and proved`,
      `  of ${floors} floors of sound jobs ${laid} are laid, ${((100 * laid) / floors).toFixed(2)} %`,
      ...this.notLaid.map((cause) => `  not laid: ${cause}`),
      ...rows,
    ].join('\n')
  }
}
