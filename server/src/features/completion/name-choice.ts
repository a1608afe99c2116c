import type { Message } from '../../facts/message.ts'
import type { Block } from '../../language/tree.ts'
import type { View } from '../view.ts'
import type { CompletionKind } from './completion-item.ts'

/** A name of this job that may stand at a place. */
export interface NameChoice {
  readonly name: string
  /** The room of a wall, where both are chosen at once. */
  readonly of?: string
  readonly kind: CompletionKind
  readonly detail: string
}

/** Where a name is to stand. */
export interface NamePlace {
  readonly view: View
  readonly block: Block
  /** The first word of the line. */
  readonly word: string
  readonly form: string
  /** Which of the names of its phrase it is, from 0. */
  readonly position: number
  readonly offset: number
  /** What was last said of the job. */
  readonly said: readonly Message[]
}
