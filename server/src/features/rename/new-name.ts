import { keyOf } from '../../language/name.ts'
import { parse } from '../../language/parse.ts'
import type { Name } from '../../language/tree.ts'
import { writtenName } from '../writing/written-name.ts'

/** The things that a rename gives another name. */
export type Renamed =
  | 'room'
  | 'closet'
  | 'wall'
  | 'corner'
  | 'opening'
  | 'recess'
  | 'obstacle'
  | 'product'
  | 'floor'
  | 'prices'

/** A name as it was typed for a rename: without quotes round it, or why it can be none. */
export type NewName =
  | { readonly kind: 'name'; readonly text: string; readonly key: string }
  | { readonly kind: 'refused'; readonly why: string }

/** Reads a new name as a line that gives one would, and refuses what such a line would refuse. */
export function newName(kind: Renamed, typed: string): NewName {
  const text = typed
    .trim()
    .replace(/^["\u201c](.*)["\u201d]$/s, '$1')
    .trim()
  if (text === '') return { kind: 'refused', why: 'A name has one sign at least.' }
  if (/["\u201c\u201d,\r\n]/.test(text)) {
    return { kind: 'refused', why: 'A name holds no comma, no quote and no line end.' }
  }
  const line = lineGiving(kind, writtenName(text))
  const { blocks, messages } = parse('', line)
  const [said] = messages
  if (said !== undefined) return { kind: 'refused', why: said.text }
  const name = nameIn(blocks[0]!)
  return name?.key === keyOf(text)
    ? { kind: 'name', text: name.text, key: name.key }
    : { kind: 'refused', why: `A line would not read "${text}" as one name.` }
}

function lineGiving(kind: Renamed, name: string): string {
  switch (kind) {
    case 'room':
    case 'product':
    case 'floor':
    case 'prices':
      return `${kind} ${name}`
    case 'corner':
      return `room den\n  corner ${name}`
    default:
      return `room den\n  north 9', called ${name}`
  }
}

function nameIn(block: {
  readonly name: Name | null
  readonly under: readonly { readonly phrases: readonly { readonly names: readonly Name[] }[] }[]
}): Name | null {
  const [line] = block.under
  return line === undefined ? block.name : (line.phrases.at(-1)?.names[0] ?? null)
}
