import type { Span } from '../../facts/span.ts'
import { meaningOf } from '../names/meaning.ts'
import { namesOn } from '../names/name-use.ts'
import { thingOn } from '../place/line-thing.ts'
import type { Asked } from './asked.ts'
import { jobParts } from './file.ts'
import type { HoverPart } from './parts.ts'
import { expectParts, holdParts } from './settled.ts'
import { thingParts } from './thing.ts'

/** What one line of a block tells; nothing for the heading of one, but for the job's. */
export function lineParts(asked: Asked): readonly HoverPart[] {
  const { view, block, entry } = asked
  if (entry === block) return block.word === 'job' ? jobParts(view) : []
  switch (entry.word) {
    case 'hold':
      return view.measured.job.holds.filter(isOn(entry.line.span)).flatMap(holdParts)
    case 'expect':
      return expectations(asked)
    case 'accept':
      return accepted(asked)
    default: {
      const thing = thingOn(view.measured, block, entry)
      return thing === null ? [] : thingParts(asked, thing)
    }
  }
}

function expectations(asked: Asked): readonly HoverPart[] {
  const floor = asked.index.floors.get(asked.block.name?.key ?? '')
  if (floor === undefined) return []
  return floor.expects
    .filter(isOn(asked.entry.line.span))
    .flatMap((expected) => expectParts(asked, floor, expected))
}

function accepted(asked: Asked): readonly HoverPart[] {
  const { view, block, entry } = asked
  return namesOn(block, entry).flatMap((use) => {
    const thing = use.kind === 'code' ? meaningOf(view.measured, block, use) : null
    return thing === null ? [] : thingParts(asked, thing)
  })
}

function isOn(line: Span): (one: { readonly span: Span }) => boolean {
  return ({ span }) => span.file === line.file && line.start <= span.start && span.end <= line.end
}
