import type { Span } from '../facts/span.ts'
import { type At, at } from './at.ts'
import { type Asked, asked } from './hover/asked.ts'
import { figureParts } from './hover/figure.ts'
import { includeParts, jobParts } from './hover/file.ts'
import type { Hover, HoverPart } from './hover/parts.ts'
import { expectParts, holdParts } from './hover/settled.ts'
import { thingParts } from './hover/thing.ts'
import { phraseParts, wordParts } from './hover/word.ts'
import { thingOn } from './line-thing.ts'
import { meaningOf } from './meaning.ts'
import type { View } from './view.ts'

export type { Hover, HoverPart, Step } from './hover/parts.ts'

/**
 * What stands at an offset, explained: any number down to the readings it follows from, with formula,
 * rule and source; else what the word says. Null where there is nothing to explain.
 */
export function hover(view: View, offset: number): Hover | null {
  const here = at(view.tree, offset)
  if (here.block === null || here.entry === null) return null
  const about = asked(view, here.block, here.path)
  return (
    nameHover(about, here) ??
    figureHover(about, here) ??
    wordHover(about, here) ??
    textHover(about, here) ??
    phraseHover(about, here)
  )
}

/** `free` names and those that nothing has are told by their phrase. */
function nameHover(about: Asked, { name }: At): Hover | null {
  if (name === null) return null
  const { measured } = about.view
  const thing = meaningOf(measured, about.block, name)
  if (thing === null) return null
  return { span: name.name.span, parts: thingParts(about, thing) }
}

function figureHover(about: Asked, { phrase, measure }: At): Hover | null {
  if (phrase === null || measure === null) return null
  const line = about.entry.word === 'expect' ? lineParts(about) : []
  return { span: measure.span, parts: [...figureParts(about, phrase, measure), ...line] }
}

/** A first word: the thing that its line tells, then what the word says. */
function wordHover(about: Asked, { onWord }: At): Hover | null {
  if (!onWord) return null
  const says = wordParts(about) ?? []
  const parts = [...lineParts(about), ...says]
  return parts.length === 0 ? null : { span: about.entry.wordSpan, parts }
}

/** What one line of a block tells, where it is no heading. */
function lineParts(about: Asked): readonly HoverPart[] {
  const { view, block, entry, index } = about
  const { job } = view.measured
  if (entry === block) return block.word === 'job' ? jobParts(view) : []
  const isHere = ({ span }: { readonly span: Span }) =>
    span.start === entry.line.span.start && span.file === entry.line.span.file
  if (entry.word === 'hold') {
    const hold = job.holds.find(isHere)
    return hold === undefined ? [] : holdParts(hold)
  }
  if (entry.word === 'expect') {
    const floor = index.floors.get(block.name?.key ?? '')
    return (floor?.expects.filter(isOnLine(entry.line.span)) ?? []).flatMap((expected) =>
      expectParts(about, floor!, expected),
    )
  }
  const thing = thingOn(view.measured, block, entry)
  return thing === null ? [] : thingParts(about, thing)
}

function isOnLine(line: Span): (one: { readonly span: Span }) => boolean {
  return ({ span }) => span.file === line.file && line.start <= span.start && span.end <= line.end
}

/** The path of an include, the title of the job. */
function textHover({ view, block, entry }: Asked, { token }: At): Hover | null {
  if (token?.kind !== 'text' || entry !== block) return null
  if (block.word === 'include') return { span: block.textSpan, parts: includeParts(view, block) }
  if (block.word === 'job') return { span: block.textSpan, parts: jobParts(view) }
  return null
}

function phraseHover(about: Asked, { phrase }: At): Hover | null {
  if (phrase === null) return null
  const line = about.entry.word === 'hold' ? lineParts(about) : []
  return { span: phrase.span, parts: [...line, ...phraseParts(about, phrase)] }
}
