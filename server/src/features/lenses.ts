import type { Span } from '../facts/span.ts'
import { counted } from '../job/sentence.ts'
import type { Block } from '../language/tree.ts'
import { visible } from '../report/visible.ts'
import { countedIndex } from './figures/counted-index.ts'
import { floorFigures } from './figures/floor-figures.ts'
import { jobIndex } from './names/job-index.ts'
import { thingOn } from './place/line-thing.ts'
import type { View } from './view.ts'

/** A line of small print over a block, and what choosing it does. */
export interface Lens {
  readonly span: Span
  readonly text: string
  readonly does: /** Shows the drawing. */
    | { readonly kind: 'preview' }
    /** Goes to a place. */
    | { readonly kind: 'go'; readonly to: Span }
    | null
}

/** Who else reads this file: jobs that include it, as far as whoever asks has looked. */
export interface Shared {
  readonly jobs: number
}

/**
 * Over a floor how it is set out, over a room with walls where it is laid, and in a file without a job line over
 * products and rooms how many jobs read them. Each lens keeps its line while counts are worked out.
 */
export function lenses(view: View, shared: Shared | null = null): readonly Lens[] {
  return view.tree.blocks.flatMap((block) => {
    const lens = lensOver(view, block)
    const readBy = shared === null ? null : readByLens(block, shared)
    return [...(lens === null ? [] : [lens]), ...(readBy === null ? [] : [readBy])]
  })
}

function lensOver(view: View, block: Block): Lens | null {
  const thing = thingOn(view.measured, block, block)
  const { span } = block.line
  if (thing?.kind === 'floor') {
    return { span, text: setOutText(view, thing.floor.name.key), does: { kind: 'preview' } }
  }
  if (thing?.kind !== 'room') return null
  const floor = jobIndex(view.measured).laidIn.get(thing.room.name.key)
  if (floor === undefined) {
    return thing.room.walls.length === 0 ? null : { span, text: 'in no floor yet', does: null }
  }
  const text = `in floor ${visible(floor.name.text)}`
  return { span, text, does: { kind: 'go', to: floor.name.span } }
}

/** "set out: 45 courses, 428 planks, 187 cut pieces, no breaches". */
function setOutText({ counted: compiled }: View, key: string): string {
  if (compiled === null) return 'set out: being counted'
  const floor = countedIndex(compiled).floors.get(key)
  if (floor === undefined) return 'set out: not yet'
  const { courses, planks, cut, breaches } = floorFigures(floor.laid)
  const figures = [
    counted(courses, 'course'),
    counted(planks, 'plank'),
    counted(cut, 'cut piece'),
    breaches === 0 ? 'no breaches' : counted(breaches, 'breach', 'breaches'),
  ]
  const open = compiled.takeoff.complete ? '' : ', incomplete'
  return `set out: ${figures.join(', ')}${open}`
}

function readByLens(block: Block, { jobs }: Shared): Lens | null {
  if (block.name === null || !SHARED.includes(block.word)) return null
  const text = jobs === 0 ? 'read by no job' : `read by ${counted(jobs, 'job')}`
  return { span: block.line.span, text, does: null }
}

const SHARED: readonly string[] = ['room', 'product', 'prices']
