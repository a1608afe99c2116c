import { exampleOf } from '../../language/examples.ts'
import type { FigureWanted, Form, NameWanted, Part } from '../../language/forms.ts'
import type { UnitStyle } from '../../units/length.ts'
import { type Insert, type InsertPart, joined, READING, stop, text } from '../writing/insert.ts'

/** What stands for a name until it is filled in, where nothing is offered for it. */
const NAME_HINTS = {
  ROOM: 'room',
  WALL: 'wall',
  CORNER: 'corner',
  PRODUCT: 'product',
  TRIM: 'trim',
  NAME: 'name',
} as const

/** What places to be filled in are filled from. */
export interface Filling {
  readonly style: UnitStyle
  /** The names to choose from, as a line takes them. */
  readonly names: (wanted: NameWanted) => readonly string[]
}

/** The text of a form, or of some of its parts, with a stop for each place to be filled in. */
export function formInsert(parts: readonly Part[], filling: Filling): Insert {
  return joined(
    parts.flatMap(
      (part, i): Insert => [...(i === 0 ? [] : [text(' ')]), ...partInsert(part, filling)],
    ),
  )
}

/** A longer list helps nobody to choose. */
export const MOST_CHOICES = 20

function partInsert(part: Part, { style, names }: Filling): readonly InsertPart[] {
  switch (part.kind) {
    case 'words':
      return [text(part.words.join(' '))]
    case 'choice': {
      const options = part.options.map((option) => option.join(' '))
      return options.length === 1 ? [text(options[0]!)] : [stop(options[0]!, options)]
    }
    case 'figure':
      return figureInsert(part.wanted, style)
    case 'name': {
      const choices = names(part.wanted).slice(0, MOST_CHOICES)
      return [stop(choices[0] ?? NAME_HINTS[part.wanted], choices.length > 1 ? choices : [])]
    }
  }
}

/** A length is `?` until it is read; what is counted or quoted stands as a sample. */
function figureInsert(wanted: FigureWanted, style: UnitStyle): readonly InsertPart[] {
  if (wanted === 'LENGTH') return [READING]
  if (wanted === 'SIZE') return [stop(exampleOf('SIZE', style))]
  const sample = exampleOf(wanted, style)
  const sign = /[%°]$/.exec(sample)?.[0] ?? ''
  return [stop(sample.slice(0, sample.length - sign.length)), ...(sign === '' ? [] : [text(sign)])]
}

/** A form as a list shows it: `… from left or right`. */
export function formLabel({ parts }: Pick<Form, 'parts'>): string {
  return parts.map(partLabel).join(' ')
}

function partLabel(part: Part): string {
  switch (part.kind) {
    case 'words':
      return part.words.join(' ')
    case 'choice':
      return part.options.map((option) => option.join(' ')).join(' or ')
    case 'figure':
      return `…${SIGNS.get(part.wanted) ?? ''}`
    case 'name':
      return NAME_HINTS[part.wanted]
  }
}

const SIGNS: ReadonlyMap<FigureWanted, string> = new Map([
  ['PERCENT', '%'],
  ['ANGLE', '°'],
])
