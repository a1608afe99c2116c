import { type Asked, asked } from './hover/asked.ts'
import { figureParts } from './hover/figure.ts'
import { includeParts, jobParts } from './hover/file.ts'
import { lineParts } from './hover/line.ts'
import type { Hover } from './hover/parts.ts'
import { thingParts } from './hover/thing.ts'
import { phraseParts, wordParts } from './hover/word.ts'
import { meaningOf } from './names/meaning.ts'
import { type At, at } from './place/at.ts'
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
