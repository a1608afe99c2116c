import type { Message } from '../facts/message.ts'
import type { Job } from '../job/job.ts'
import type { Tree } from '../language/tree.ts'
import type { LaidFloor } from '../layout/lay.ts'
import type { Survey } from '../survey/survey.ts'
import type { Takeoff } from '../takeoff/takeoff.ts'

/** What the readings come to, before any floor is laid. */
export interface Measured {
  readonly root: string
  /** The root first, then what it includes. */
  readonly trees: readonly Tree[]
  readonly job: Job
  readonly survey: Survey
  /** The root's first, by place; then those of each included file. */
  readonly messages: readonly Message[]
}

/** Everything that a job's text comes to: what `compile` gives and every report is made from. */
export interface Compiled extends Measured {
  readonly floors: readonly LaidFloor[]
  readonly takeoff: Takeoff
  /** `errors` also stands for warnings that no `accept` line settles. */
  readonly exit: 'sound' | 'errors' | 'incomplete'
}
