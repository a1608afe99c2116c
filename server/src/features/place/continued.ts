import type { Form, Part } from '../../language/forms.ts'
import type { Item } from '../../language/grammar.ts'
import { lengthOfName, suits } from '../../language/match.ts'

/** How a form goes on after what is typed of it. */
export interface Continued {
  readonly form: Form
  /** The part of the form that the cursor is at. */
  readonly next: number
  /** What is typed of that part; empty where it has not begun. */
  readonly typed: readonly Item[]
}

/**
 * The ways in which items can be the beginning of a form: none where they do not fit it, several where a
 * word may still belong to a name or part it already.
 */
export function continuations(
  form: Form,
  items: readonly Item[],
  isTouched: boolean,
): readonly Continued[] {
  const walk = (at: number, next: number): readonly Continued[] => {
    const part = form.parts[next]
    if (part === undefined) return []
    if (at === items.length) return [{ form, next, typed: [] }]
    const here = { form, next, typed: items.slice(at) }
    const isLast = isTouched && at === items.length - 1
    switch (part.kind) {
      case 'words':
        if (isAbout(part, items[at]!)) return walk(at, next + 1)
        if (isLast) return begins(items[at]!, part.words[0]!) ? [here] : []
        return isWord(items[at]!, part.words[0]!) ? walk(at + 1, next + 1) : []
      case 'choice':
        return part.options.flatMap((option) => walkOption(at, next, option))
      case 'figure': {
        const item = items[at]!
        if (item.kind !== 'measure' || !suits(item.measure, part.wanted)) return []
        return isLast ? [here] : walk(at + 1, next + 1)
      }
      case 'name':
        return walkName(at, next)
    }
  }

  const walkOption = (
    at: number,
    next: number,
    option: readonly string[],
  ): readonly Continued[] => {
    const typed = items.slice(at, at + option.length)
    const isEnd = at + typed.length === items.length
    const fits = typed.every((item, i) =>
      isEnd && isTouched && i === typed.length - 1
        ? begins(item, option[i]!)
        : isWord(item, option[i]!),
    )
    if (!fits) return []
    const isOpen = typed.length < option.length || (isEnd && isTouched)
    return isOpen
      ? [{ form: narrowed(form, next, option), next, typed }]
      : walk(at + typed.length, next + 1)
  }

  const walkName = (at: number, next: number): readonly Continued[] => {
    const length = lengthOfName(items, at)
    if (length === 0) return []
    if (at + length < items.length) return walk(at + length, next + 1)
    const here: Continued = { form, next, typed: items.slice(at) }
    if (!isTouched) return [here, ...walk(items.length, next + 1)]
    return length > 1 ? [here, ...walk(items.length - 1, next + 1)] : [here]
  }

  return walk(0, 0)
}

/** The form with one choice made. */
function narrowed(form: Form, at: number, option: readonly string[]): Form {
  const parts = form.parts.map(
    (part, i): Part => (i === at ? { kind: 'choice', options: [option] } : part),
  )
  return { text: form.text, parts }
}

/** `about` before a figure is part of the figure. */
function isAbout(part: Part, item: Item): boolean {
  const asks = part.kind === 'words' && part.words[0] === 'about'
  return asks && item.kind === 'measure' && item.measure.about !== null
}

function isWord(item: Item, word: string): boolean {
  return item.kind === 'word' && item.text.toLowerCase() === word
}

function begins(item: Item, word: string): boolean {
  return item.kind === 'word' && word.startsWith(item.text.toLowerCase())
}
