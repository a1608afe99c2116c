/**
 * The forms of the vocabulary, taken apart once. A form is words parted by blanks; what it may hold is
 * told in `word.ts`.
 */
export type FigureWanted = 'LENGTH' | 'SIZE' | 'NUMBER' | 'COUNT' | 'PERCENT' | 'ANGLE' | 'DATE'
export type NameWanted = 'ROOM' | 'WALL' | 'CORNER' | 'PRODUCT' | 'TRIM' | 'NAME'

export type Part =
  | { readonly kind: 'words'; readonly words: readonly string[] }
  /** One of several; what was typed is a choice of the phrase. */
  | { readonly kind: 'choice'; readonly options: readonly (readonly string[])[] }
  | { readonly kind: 'figure'; readonly wanted: FigureWanted }
  | { readonly kind: 'name'; readonly wanted: NameWanted }

export interface Form {
  readonly text: string
  readonly parts: readonly Part[]
}

const FIGURES: readonly string[] = ['LENGTH', 'SIZE', 'NUMBER', 'COUNT', 'PERCENT', 'ANGLE', 'DATE']
const NAMES: readonly string[] = ['ROOM', 'WALL', 'CORNER', 'PRODUCT', 'TRIM', 'NAME']

export const WAYS: readonly string[] = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]

/** Takes a form of the vocabulary apart. */
export function compileForm(text: string): Form {
  const options = text.split('|').map((option) => option.split(' '))
  const whole = options.slice(1).some((option) => option.length > 1) && !/[A-Z]/.test(text)
  if (whole) return { text, parts: [{ kind: 'choice', options }] }
  return { text, parts: text.split(' ').map(compilePart) }
}

function compilePart(word: string): Part {
  if (FIGURES.includes(word)) return { kind: 'figure', wanted: word as FigureWanted }
  if (NAMES.includes(word)) return { kind: 'name', wanted: word as NameWanted }
  if (word === 'WAY') return { kind: 'choice', options: WAYS.map((way) => [way]) }
  if (word.includes('|')) {
    return { kind: 'choice', options: word.split('|').map((option) => [option]) }
  }
  return { kind: 'words', words: [word] }
}
