import { isRoot } from '../job/includes.ts'
import type { Sources } from './job-texts.ts'
import { type JobEvents, OpenJob } from './open-job.ts'
import type { Schedule } from './schedule.ts'
import type { Milestone } from './waiting.ts'
import type { Workspace } from './workspace.ts'

/** A file whose owner changes with every look is left with one of them until a text moves. */
const MOST_LOOKS = 5

/** What is told of jobs beyond how far each has come. */
export interface JobsEvents extends JobEvents {
  /** A file that is open turned out to be one of its own; it may be done by then. */
  joined(job: OpenJob): void
  closed(job: OpenJob): void
}

/**
 * The jobs that are worked on: of each open root, of each root that includes an open file, and of each
 * open file that nobody includes.
 */
export class Jobs {
  readonly #sources: Sources
  readonly #schedule: Schedule
  readonly #workspace: Workspace
  readonly #events: JobsEvents
  readonly #jobs = new Map<string, OpenJob>()
  /** The roots of each open file; while they are looked for, the promise alone. */
  readonly #owners = new Map<string, { readonly roots: readonly string[]; readonly seen: string }>()
  /** Of each job, the open files that it reached when last measured, and whether they are roots. */
  readonly #reach = new Map<OpenJob, ReadonlyMap<string, boolean>>()
  readonly #looking = new Map<string, Promise<void>>()

  constructor(sources: Sources, schedule: Schedule, workspace: Workspace, events: JobsEvents) {
    this.#sources = sources
    this.#schedule = schedule
    this.#workspace = workspace
    this.#events = events
  }

  /** The jobs that an open file is part of, its own first; none for a file that is not open. */
  async of(uri: string): Promise<readonly OpenJob[]> {
    while (this.#looking.has(uri)) await this.#looking.get(uri)
    return this.#ofNow(uri)
  }

  /** The job that an open file is looked at in, so far on: while one comes so far, it may turn out another. */
  async at(uri: string, stage: Milestone): Promise<OpenJob | undefined> {
    let [job] = await this.of(uri)
    for (;;) {
      await job?.until(stage)
      const [now] = await this.of(uri)
      if (now === job) return job
      job = now
    }
  }

  /** The job that an open file is looked at in, as far as that is known now. */
  firstOf(uri: string): OpenJob | undefined {
    return this.#looking.has(uri) ? undefined : this.#ofNow(uri)[0]
  }

  #ofNow(uri: string): readonly OpenJob[] {
    const roots = this.#owners.get(uri)?.roots ?? []
    return roots.flatMap((root) => this.#jobs.get(root) ?? [])
  }

  /** The job of a root, where it is worked on. */
  get(root: string): OpenJob | undefined {
    return this.#jobs.get(root)
  }

  opened(uri: string): void {
    this.#touch(uri, 0)
    this.#assign(uri)
  }

  changed(uri: string, pauseMs: number): void {
    this.#touch(uri, pauseMs)
  }

  closed(uri: string): void {
    this.#owners.delete(uri)
    this.#clear()
    for (const job of this.#jobs.values()) if (job.names(uri)) job.reread([uri], 0)
  }

  /** Files changed on the disk: each job that names some of them reads those again, once. */
  reread(uris: readonly string[], pauseMs: number): void {
    for (const job of this.#jobs.values()) {
      const own = uris.filter((uri) => job.names(uri))
      if (own.length > 0) job.reread(own, pauseMs)
    }
    for (const uri of this.#owners.keys()) this.#assign(uri)
  }

  #touch(uri: string, pauseMs: number): void {
    for (const job of this.#jobs.values()) if (job.names(uri)) job.touch(pauseMs)
  }

  /** Looks for the roots of an open file, unless that is under way. */
  #assign(uri: string): void {
    if (this.#looking.has(uri)) return
    const looking = this.#look(uri)
      .catch((error) => this.#events.failed(error))
      .finally(() => this.#looked(uri))
    this.#looking.set(uri, looking)
  }

  /** Again, where what the jobs show of it was another at the end: a text may have moved meanwhile. */
  async #look(uri: string): Promise<void> {
    let seen: string
    let looks = 0
    do {
      seen = this.#seen(uri)
      await this.#settle(uri)
      looks += 1
    } while (looks < MOST_LOOKS && (seen !== this.#seen(uri) || !this.#isOwned(uri)))
    const owner = this.#owners.get(uri)
    if (owner !== undefined) this.#owners.set(uri, { ...owner, seen: this.#seen(uri) })
  }

  /** Until it is sure whose part a file is, the jobs that showed it so far go on as well. */
  async #settle(uri: string): Promise<void> {
    const found = await this.#workspace.rootsOf(uri)
    const before = this.#owners.get(uri)?.roots ?? []
    const roots = found.filter((root) => !this.#sources.onlyRead.has(root))
    await this.#own(uri, [...new Set([...before, ...(roots.length > 0 ? roots : [uri])])])
    const reaching = roots.filter((root) => this.#reaches(root, uri))
    await this.#own(uri, reaching.length > 0 ? reaching : [uri])
    this.#clear()
  }

  /** As far as the rooms of the newest texts are measured; else as it was before. */
  #reaches(root: string, uri: string): boolean {
    const job = this.#jobs.get(root)
    if (job === undefined) return false
    return job.measured === null ? this.#reach.get(job)?.has(uri) === true : job.view(uri) !== null
  }

  /** Starts the jobs of these roots, and waits until their rooms are measured. */
  async #own(uri: string, roots: readonly string[]): Promise<void> {
    if (this.#sources.documents.get(uri) === undefined) return
    this.#owners.set(uri, { roots, seen: '' })
    for (const root of roots) this.#start(root)
    await Promise.all(roots.map((root) => this.#jobs.get(root)?.until('measured')))
  }

  #looked(uri: string): void {
    this.#looking.delete(uri)
    const job = this.firstOf(uri)
    if (job !== undefined && job.measured !== null) this.#events.joined(job)
    this.#checkOwner(uri)
  }

  #start(root: string): void {
    if (this.#jobs.has(root)) return
    const job = new OpenJob(root, this.#sources, this.#schedule, {
      ...this.#events,
      measured: (one) => this.#measured(one),
    })
    this.#jobs.set(root, job)
    job.touch(0)
  }

  /** An include line or a job line may have come or gone: who owns what is looked at again. */
  #measured(job: OpenJob): void {
    const open = this.#sources.documents.uris
    const views = open.map((uri) => [uri, job.view(uri)] as const)
    const reached = views.flatMap(([uri, view]) =>
      view ? [[uri, isRoot(view.tree)] as const] : [],
    )
    this.#reach.set(job, new Map(reached))
    this.#events.measured(job)
    for (const uri of this.#owners.keys()) this.#checkOwner(uri)
  }

  #checkOwner(uri: string): void {
    const owner = this.#owners.get(uri)
    if (owner === undefined) return
    if (owner.seen !== this.#seen(uri) || !this.#isOwned(uri)) this.#assign(uri)
  }

  /** Whether each job that the file is looked at in reaches it; its own does in any case. */
  #isOwned(uri: string): boolean {
    const { roots } = this.#owners.get(uri) ?? { roots: [] }
    return roots.every((root) => root === uri || this.#reaches(root, uri))
  }

  /** What the jobs show of who owns a file: looked for again only when this is another. */
  #seen(uri: string): string {
    const reaching = [...this.#reach].filter(([, reached]) => reached.has(uri))
    return reaching
      .map(([{ root }, reached]) => `${root} ${reached.get(uri)}`)
      .sort()
      .join('\n')
  }

  /** Jobs that no open file needs are closed. */
  #clear(): void {
    const needed = new Set([...this.#owners.values()].flatMap(({ roots }) => roots))
    for (const [root, job] of this.#jobs) {
      if (needed.has(root)) continue
      this.#jobs.delete(root)
      this.#reach.delete(job)
      job.close()
      this.#events.closed(job)
    }
  }
}
