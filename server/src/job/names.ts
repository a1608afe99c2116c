import { type Fix, type Message, message } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { said } from './sentence.ts'

/** A thing with a name of its own. */
export interface Named {
  readonly name: Name
}

/**
 * Things of one kind by the keys of their names, in written order. A name given twice is an error
 * naming both places and means the first; names that differ by accents only are warned of. Case makes
 * no difference: it is the same name.
 */
export function directory<T extends Named>(
  kind: string,
  things: readonly T[],
  binding: Binding,
): ReadonlyMap<string, T> {
  const known = new Map<string, T>()
  const bare = new Map<string, T>()
  for (const thing of things) {
    const first = known.get(thing.name.key)
    if (first !== undefined) {
      binding.say(nameTwice(kind, thing.name, first.name, binding))
      continue
    }
    const plain = withoutAccents(thing.name.key)
    const alike = bare.get(plain)
    if (alike !== undefined) binding.say(namesAlike(kind, thing.name, alike.name, binding))
    known.set(thing.name.key, thing)
    bare.set(plain, thing)
  }
  return known
}

/** Things of one room by their names, where they have any. A name given twice means the first. */
export function byNameOnce<T extends { readonly name: Name | null }>(
  kind: string,
  things: readonly T[],
  binding: Binding,
): ReadonlyMap<string, T> {
  const known = new Map<string, T>()
  for (const thing of things) {
    if (thing.name === null) continue
    const first = known.get(thing.name.key)
    if (first === undefined) known.set(thing.name.key, thing)
    else binding.say(nameTwice(kind, thing.name, first.name!, binding))
  }
  return known
}

/** A name that nothing has. */
export interface Unknown {
  /** As in "No room is called hal.": "room", "wall of den". */
  readonly kind: string
  readonly name: Name
  readonly known: Iterable<Named>
  /** What else to do about it, in whole sentences. */
  readonly help: string
}

/** What is said of a name that nothing has: the nearest one, which is also the fix, and help. */
export function unknownName({ kind, name, known, help }: Unknown, binding: Binding): Message {
  const near = nearestName(name, known, binding)
  const asked = near === null ? '' : `Is ${said(near.text)} meant? `
  const text = `No ${kind} is called ${said(name.text)}. ${asked}${help}`
  const fixes = near === null ? [] : [writeName(name, near.text)]
  const related = near === null ? [] : [{ span: near.span, text: `Here is ${near.text}.` }]
  return message('error', 'name-unknown', name.span, text, { fixes, related })
}

/**
 * The known name that a name most likely means, or null: the nearest by its letters, else the only one
 * whose words it has in another order, or with one too many or too few.
 */
export function nearestName(name: Name, known: Iterable<Named>, binding: Binding): Name | null {
  const byKey = new Map([...known].map((thing) => [thing.name.key, thing.name]))
  const near = byKey.get(binding.nearest(name.key, [...byKey.keys()]) ?? '')
  if (near !== undefined) return near
  const [one, other] = [...byKey.values()].filter(({ key }) => haveSameWords(key, name.key))
  return one !== undefined && other === undefined ? one : null
}

/** A closet is not the room that it opens from: both have it in their names or neither. */
function haveSameWords(a: string, b: string): boolean {
  if (a.endsWith(' closet') !== b.endsWith(' closet')) return false
  const [wordsOfA, wordsOfB] = [a.split(' '), b.split(' ')]
  if (Math.abs(wordsOfA.length - wordsOfB.length) > 1) return false
  const [fewer, more] =
    wordsOfA.length < wordsOfB.length ? [wordsOfA, wordsOfB] : [wordsOfB, wordsOfA]
  return fewer.every((word) => more.includes(word))
}

/** The fix that writes a known name in place of another. */
export function writeName({ span }: Name, text: string): Fix {
  return { title: `Write ${text}`, edits: [{ span, text }] }
}

/** Says that a name which may be given but once in its place was given again. */
export function nameTwice(kind: string, name: Name, first: Name, binding: Binding): Message {
  const text =
    `${said(name.text)} is already the name of a ${kind}, on ${binding.place(first.span, name.span)}. ` +
    'Give this one another name.'
  const related = [{ span: first.span, text: 'It was first named here.' }]
  return message('error', 'name-twice', name.span, text, { related })
}

function namesAlike(kind: string, name: Name, other: Name, binding: Binding): Message {
  const text =
    `${said(name.text)} and ${said(other.text)} on ${binding.place(other.span, name.span)} differ by accents ` +
    `only. If they are one ${kind}, write it one way.`
  const related = [{ span: other.span, text: 'The other one.' }]
  return message('warning', 'names-alike', name.span, text, { related })
}

/** A sign outside the plain ones, which alone may have an accent. */
const ACCENTED = /[^ -~]/

/** Combining marks taken off, by the Unicode decomposition: é and e are alike. */
function withoutAccents(key: string): string {
  if (!ACCENTED.test(key)) return key
  return key.normalize('NFD').replace(/\p{M}/gu, '')
}
