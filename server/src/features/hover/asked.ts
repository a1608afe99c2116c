import type { Block, Entry } from '../../language/tree.ts'
import type { UnitStyle } from '../../units/length.ts'
import { type JobIndex, jobIndex } from '../names/job-index.ts'
import type { View } from '../view.ts'

/** Where an explanation is asked for, and what it may look into. */
export interface Asked {
  readonly view: View
  readonly block: Block
  /** From the block to the line's own entry. */
  readonly path: readonly Entry[]
  /** The line's own entry. */
  readonly entry: Entry
  readonly index: JobIndex
  readonly units: UnitStyle
}

export function asked(view: View, block: Block, path: readonly Entry[]): Asked {
  const { measured } = view
  const entry = path.at(-1) ?? block
  return { view, block, path, entry, index: jobIndex(measured), units: measured.job.units }
}
