/** What an environment is told to do. Plain data: it goes into a process or a worker as JSON. */
export interface Order {
  /** In the order in which they are run; one may come twice. */
  readonly jobs: readonly JobText[]
  /** Before the core is loaded. */
  readonly engine: EngineChanges
  /** Whether the texts of a job come to the core in another order than they were read in. */
  readonly reversed: boolean
  /** Keys of outputs that are wanted whole: those that were found to differ. */
  readonly wanted: readonly string[]
}

export interface JobText {
  readonly name: string
  readonly root: string
  /** Every file by its path. */
  readonly files: readonly (readonly [path: string, text: string])[]
}

export interface EngineChanges {
  /** An instant from which the clock runs on; `backwards`; empty for the machine's own. */
  readonly clock: string
  /** Inexact functions give the next number up, as another engine's may. */
  readonly otherSines: boolean
  /** Clock, locale, chance and inexact functions throw. */
  readonly forbidden: boolean
}

/** What an environment gives back. */
export interface Answer {
  readonly seen: Seen
  readonly outputs: readonly Output[]
}

export interface Output {
  /** Job and output: "upper-floor.floor: drawing". */
  readonly key: string
  /** SHA-256 of its UTF-8 bytes, in hexadecimal figures. */
  readonly digest: string
  /** Only where it was wanted. */
  readonly text?: string
}

/** The environment as a program in it sees it, to prove that it is what it is said to be. */
export interface Seen {
  /** Offsets from UTC in January and July 2026, "GMT-08:00 GMT-07:00". */
  readonly zone: string
  readonly locale: string
  /** As the year stands in an instant: "2028-02-29T23:59:59.000Z". */
  readonly clock: string
  /** True where a second look at the clock gives no later time. */
  readonly clockStands: boolean
  readonly sine: number
  /** "Node 24", "page", "classic worker". */
  readonly place: string
}
