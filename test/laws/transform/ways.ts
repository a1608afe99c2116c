import type { Phrase, Tree } from '../../../server/src/language/tree.ts'
import type { Edit } from './edit.ts'

export interface WayInText {
  readonly span: Edit['span']
  readonly way: string
}

const WAY = /^(?:(?:north|south)-(?:east|west)|east-west|north-south|north|south|east|west)$/i
/** Forms whose names are walls or corners, which a way may stand for. */
const BY_WAY = /WALL|CORNER|^NAME$/

/** Every way in a phrase: a choice of its form, or a wall or corner that has no other name. */
export function waysOf({ text }: Tree, phrase: Phrase): readonly WayInText[] {
  const { span, names, form } = phrase
  const isName = (at: number) => names.some((name) => name.span.start <= at && at < name.span.end)
  const words = text.slice(span.start, span.end).matchAll(/[\w-]+/g)
  const choices = [...words]
    .map(({ 0: way, index }) => ({ way, at: span.start + index }))
    .filter(({ way, at }) => WAY.test(way) && !isName(at))
  const named = BY_WAY.test(form) ? names.filter((name) => WAY.test(name.text)) : []
  return [
    ...choices.map(({ way, at }) => ({ way, span: { start: at, end: at + way.length } })),
    ...named.map((name) => ({ way: name.text, span: name.span })),
  ]
}
