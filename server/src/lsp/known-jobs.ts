import type { KnownJob } from '../features/rename/known-job.ts'
import { nameOf } from './addresses.ts'
import type { Sources } from './job-texts.ts'
import type { Jobs } from './jobs.ts'
import { OpenJob } from './open-job.ts'
import type { Schedule } from './schedule.ts'
import { MOST_FILES, type Workspace } from './workspace.ts'

/** So many jobs that are not open are looked through: a shop's jobs of the last years. */
const MOST_JOBS = 300
/** So many of them are kept for the next question, as long as no file changes. */
const KEPT = 40
/** They are only measured: no count is ever due. */
const NEVER_MS = 1_000_000_000

/** All jobs of the folders, for what is asked of more than the open ones. */
export class KnownJobs {
  readonly #sources: Sources
  readonly #schedule: Schedule
  readonly #workspace: Workspace
  readonly #jobs: Jobs
  readonly #kept = new Map<string, KnownJob>()
  #changes = 0

  constructor(sources: Sources, schedule: Schedule, workspace: Workspace, jobs: Jobs) {
    this.#sources = sources
    this.#schedule = schedule
    this.#workspace = workspace
    this.#jobs = jobs
  }

  /** How often some text has changed: an answer that took its time is of now only if this is the same. */
  get changes(): number {
    return this.#changes
  }

  /** Some text changed: what is kept may be of another. */
  forget(): void {
    this.#changes += 1
    this.#kept.clear()
  }

  async all(): Promise<readonly KnownJob[]> {
    return await this.#measured((await this.#workspace.roots()).slice(0, MOST_JOBS))
  }

  /**
   * The jobs that share a file with one, or with one that does, and the names of files that may be such
   * jobs and cannot be read.
   */
  async sharing(job: OpenJob): Promise<{
    readonly others: readonly KnownJob[]
    readonly unread: readonly string[]
  }> {
    const files = new Set(await this.#workspace.filesOf(job.root))
    const others = new Set<string>()
    const roots = await this.#workspace.roots()
    for (let before = -1; before < others.size; ) {
      before = others.size
      for (const root of roots) {
        const own = await this.#workspace.filesOf(root)
        if (root === job.root || ![...own].some((file) => files.has(file))) continue
        others.add(root)
        for (const file of own) files.add(file)
      }
    }
    return { others: await this.#measured([...others]), unread: await this.#unread() }
  }

  async #unread(): Promise<readonly string[]> {
    const names = (await this.#workspace.unread()).map(nameOf)
    const isCut = (await this.#workspace.files()).length >= MOST_FILES
    return isCut ? [...names, `The files beyond the first ${MOST_FILES}`] : names
  }

  async #measured(roots: readonly string[]): Promise<readonly KnownJob[]> {
    const known: KnownJob[] = []
    for (const root of roots) {
      const one = this.#kept.get(root) ?? (await this.#measure(root))
      if (one !== null) known.push(one)
    }
    return known
  }

  async #measure(root: string): Promise<KnownJob | null> {
    const open = this.#jobs.get(root)
    const job = open ?? new OpenJob(root, this.#sources, this.#schedule, QUIET)
    if (open === undefined) job.touch(NEVER_MS)
    await job.until('measured')
    const { measured } = job
    if (open === undefined) job.close()
    if (measured === null) return null
    const known = { measured, addressOf: (file: string) => job.addressOf(file) }
    if (open === undefined && this.#kept.size < KEPT) this.#kept.set(root, known)
    return known
  }
}

const QUIET = { measured() {}, counted() {}, failed() {} }
