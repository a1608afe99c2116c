import type { Span } from '../../facts/span.ts'
import { keyOf } from '../../language/name.ts'
import { namedAt } from '../names/named-at.ts'
import type { Thing } from '../names/thing.ts'
import { at } from '../place/at.ts'
import type { View } from '../view.ts'
import type { Renamed } from './new-name.ts'
import { ownName } from './own-name.ts'

export interface Refused {
  readonly kind: 'refused'
  /** In whole sentences. */
  readonly why: string
}

/** The name at an offset that may be changed, as it stands. */
export interface NameToChange {
  readonly kind: 'name'
  readonly span: Span
  readonly text: string
}

/** Whether there is a name at an offset that may be changed. */
export function nameToChange(view: View, offset: number): NameToChange | Refused {
  const found = changeable(view, offset)
  return found.kind === 'refused' ? found : { kind: 'name', span: found.span, text: found.text }
}

/** A thing whose name may be changed. */
export interface Changeable {
  readonly kind: 'thing'
  readonly thing: Thing
  readonly span: Span
  readonly text: string
}

/** The thing that is named at an offset, if its name may be changed there. */
export function changeable(view: View, offset: number): Changeable | Refused {
  const named = namedAt(view, offset)
  const use = at(view.tree, offset).name
  if (named === null || use === null || !isRenamed(named.thing.kind)) {
    return refused('Nothing stands here that has a name to be changed.')
  }
  const { thing, span } = named
  const text = ownName(thing)
  const typed = use.name.text
  if (text === null) {
    return refused(
      `${typed} is no name of its own. Give it one on its line, such as: called long wall.`,
    )
  }
  if (keyOf(text) !== use.name.key) {
    return refused(
      `${typed} is a way and stays. Its own name is ${text}: change it where that stands.`,
    )
  }
  return { kind: 'thing', thing, span, text }
}

const RENAMED: readonly string[] = [
  'room',
  'closet',
  'wall',
  'corner',
  'opening',
  'recess',
  'obstacle',
  'product',
  'floor',
  'prices',
] satisfies readonly Renamed[]

function isRenamed(kind: Thing['kind']): kind is Renamed {
  return RENAMED.includes(kind)
}

export function refused(why: string): Refused {
  return { kind: 'refused', why }
}
