import { type Compiled, compiling, type Measured, newKept, type Progress } from '../compile.ts'
import type { Message } from '../facts/message.ts'
import type { View } from '../features/view.ts'
import { includesOf } from '../job/includes.ts'
import type { Tree } from '../language/tree.ts'
import { below, folderOf, nameOf, pathBelow } from './addresses.ts'
import { JobTexts, type Sources } from './job-texts.ts'
import { type Places, placesIn, placesOf } from './places.ts'
import type { Schedule, Steps } from './schedule.ts'
import { type Milestone, Waiting } from './waiting.ts'

/** What is told of a job as it goes on. */
export interface JobEvents {
  /** The rooms of the newest texts are measured; null when the root cannot be read any more. */
  measured(job: OpenJob): void
  counted(job: OpenJob): void
  failed(error: unknown): void
}

type Stage =
  /** Nothing is left to do. */
  | 'done'
  /** The texts moved: all is to be worked out. */
  | 'due'
  /** Files are being read. */
  | 'reading'
  | 'measuring'
  /** Measured; counting waits until the keys rest. */
  | 'resting'
  | 'counting'

/**
 * One root and what its newest texts come to. Whenever a text moves, what was under way is dropped and
 * begun anew; the last version is always finished.
 */
export class OpenJob implements Steps {
  readonly root: string
  readonly folder: string
  readonly #name: string
  readonly #texts: JobTexts
  readonly #sources: Sources
  readonly #schedule: Schedule
  readonly #events: JobEvents
  readonly #kept = newKept()
  #stage: Stage = 'done'
  #steps: Generator<Progress, Compiled | { readonly missing: readonly string[] }> | null = null
  #measured: Measured | null = null
  #counted: Compiled | null = null
  #said: readonly Message[] = []
  #isReread = false
  #keysRest = true
  #callOff = () => {}
  readonly #waiting = new Waiting()

  constructor(root: string, sources: Sources, schedule: Schedule, events: JobEvents) {
    this.root = root
    this.folder = folderOf(root)
    this.#name = nameOf(root)
    this.#sources = sources
    this.#schedule = schedule
    this.#events = events
    this.#texts = new JobTexts(this.folder, this.#name, sources)
  }

  /** What the newest texts come to; null while that is being worked out. */
  get measured(): Measured | null {
    return this.#measured
  }

  get counted(): Compiled | null {
    return this.#counted
  }

  /** What there was to say of the last version that was counted. */
  get said(): readonly Message[] {
    return this.#said
  }

  /** A file as this job sees it, of its newest text; null where the job does not reach it. */
  view(uri: string): View | null {
    const file = pathBelow(this.folder, uri)
    const tree = this.#measured?.trees.find((one) => one.file === file)
    if (this.#measured === null || tree === undefined) return null
    return { file: tree.file, tree, measured: this.#measured, counted: this.#counted }
  }

  /** The address of one of its files. */
  addressOf(file: string): string {
    return below(this.folder, file)
  }

  /** The same as the editor writes it, where it has the file open. */
  uriOf(file: string): string {
    const address = this.addressOf(file)
    return this.#sources.documents.get(address)?.uri ?? address
  }

  /** Of one of its files; an open document knows its lines already. */
  placesIn(tree: Tree): Places {
    const document = this.#sources.documents.get(this.addressOf(tree.file))
    return document?.getText() === tree.text ? placesOf(document) : placesIn(tree)
  }

  /** Whether the job names this file, as far as it is known. */
  names(uri: string): boolean {
    const path = pathBelow(this.folder, uri)
    return path !== null && this.#texts.has(path)
  }

  /** Whether a file that no editor holds moved since the last count. */
  get isReread(): boolean {
    return this.#isReread
  }

  /** Texts moved; counting begins when nothing has moved for the pause. */
  touch(pauseMs: number): void {
    const { surroundings } = this.#sources
    this.#callOff()
    this.#keysRest = pauseMs === 0
    const stopRest = surroundings.after(pauseMs, () => this.#rest())
    const stopStart = surroundings.quiet(() => this.#schedule.add(this))
    this.#callOff = () => {
      stopRest()
      stopStart()
    }
    this.#begin()
  }

  /** Files changed on the disk, and are read again. */
  reread(uris: readonly string[], pauseMs: number): void {
    this.#texts.forget(uris.map((uri) => pathBelow(this.folder, uri) ?? ''))
    this.touch(pauseMs)
    this.#isReread = true
  }

  /** Resolves when the newest texts are so far; at once if they are, or if they never will be. */
  async until(stage: Milestone): Promise<void> {
    if (!this.#isAt(stage)) await this.#waiting.for(stage)
  }

  close(): void {
    this.#callOff()
    this.#schedule.drop(this)
    this.#steps = null
    this.#stage = 'done'
    this.#release()
  }

  step(): boolean {
    try {
      return this.#stepOn()
    } catch (error) {
      return this.#fail(error)
    }
  }

  #begin(): void {
    this.#schedule.drop(this)
    this.#stage = 'due'
    this.#steps = null
    this.#measured = null
    this.#counted = null
  }

  #stepOn(): boolean {
    if (this.#stage === 'due') return this.#open()
    const next = this.#steps?.next()
    if (next === undefined) return false
    if (next.done)
      return 'missing' in next.value ? this.#fetch(next.value.missing) : this.#count(next.value)
    if (next.value.kind === 'measured') return this.#measure(next.value.measured)
    return true
  }

  #open(): boolean {
    const { texts, absent } = this.#texts.now()
    if (absent.has(this.#name)) return this.#finish()
    if (!texts.has(this.#name)) return this.#fetch([this.#name])
    this.#steps = compiling(texts, this.#name, absent, this.#kept)
    this.#stage = 'measuring'
    return true
  }

  #fetch(paths: readonly string[]): boolean {
    this.#stage = 'reading'
    this.#steps = null
    const goOn = () => {
      if (this.#stage !== 'reading') return
      this.#stage = 'due'
      this.#schedule.add(this)
    }
    this.#texts.fetch(paths).then(goOn, (error) => this.#fail(error))
    return false
  }

  #measure(measured: Measured): boolean {
    this.#measured = measured
    this.#texts.keepOnly(filesNamed(measured))
    this.#stage = this.#keysRest ? 'counting' : 'resting'
    this.#events.measured(this)
    this.#release()
    return this.#keysRest
  }

  #count(compiled: Compiled): boolean {
    this.#counted = compiled
    this.#said = compiled.messages
    this.#steps = null
    this.#stage = 'done'
    this.#events.counted(this)
    this.#isReread = false
    this.#release()
    return false
  }

  /** A fault of ours: said, and nothing waits for this version any longer. */
  #fail(error: unknown): boolean {
    this.#steps = null
    this.#events.failed(error)
    return this.#finish()
  }

  #finish(): boolean {
    this.#stage = 'done'
    this.#events.measured(this)
    this.#release()
    return false
  }

  #isAt(stage: Milestone): boolean {
    if (this.#stage === 'done') return true
    return stage === 'measured' && this.#measured !== null
  }

  #release(): void {
    this.#waiting.release((stage) => this.#isAt(stage))
  }

  #rest(): void {
    this.#keysRest = true
    if (this.#stage !== 'resting') return
    this.#stage = 'counting'
    this.#schedule.add(this)
  }
}

/** All files that a job names, whether they could be read or not. */
function filesNamed({ root, trees }: Measured): readonly string[] {
  return [root, ...trees.flatMap((tree) => includesOf(tree, root).includes.map(({ path }) => path))]
}
