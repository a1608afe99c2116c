import { compileForm } from '../../language/forms.ts'
import { WALL_WORDS, type Word } from '../../language/word.ts'
import { type Insert, joined, stop, text } from '../writing/insert.ts'
import { lineStart } from '../writing/line-start.ts'
import { type Filling, formInsert } from './form-insert.ts'

const ON_WALL = ['LENGTH', 'LENGTH from left|right']
const IN_FLOOR = ['LENGTH from WALL', 'LENGTH from WALL']

/** What a line of a word usually says, form by form; for the others its needed form, or its first. */
const USUAL: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ...WALL_WORDS.map((word) => [word, ['LENGTH']] as const),
  ['slant', ['LENGTH', 'LENGTH WAY', 'LENGTH WAY']],
  ['door', [...ON_WALL, 'to ROOM']],
  ['opening', [...ON_WALL, 'to ROOM']],
  ['pass-through', [...ON_WALL, 'to ROOM']],
  ['closet', [...ON_WALL, 'LENGTH deep']],
  ['alcove', [...ON_WALL, 'LENGTH deep']],
  ['hearth', [...ON_WALL, 'LENGTH deep']],
  ['parts', ['LENGTH', 'LENGTH']],
  ['diagonal', ['LENGTH', 'from CORNER to CORNER']],
  ['across', ['LENGTH', 'from WALL to WALL', 'middle']],
  ['tie', ['LENGTH', 'LENGTH along WALL', 'LENGTH along WALL']],
  ['column', ['LENGTH round', ...IN_FLOOR]],
  ['island', ['LENGTH east-west', 'LENGTH north-south', ...IN_FLOOR]],
  ['stairwell', ['LENGTH east-west', 'LENGTH north-south', ...IN_FLOOR]],
  ['vent', ['LENGTH east-west', 'LENGTH north-south', ...IN_FLOOR]],
  ['plank', ['SIZE', 'LENGTH thick']],
  ['joints', ['LENGTH stagger', 'LENGTH shortest end', 'LENGTH narrowest rip']],
  ['lay', ['PRODUCT', 'running east-west|north-south|north-east|north-west']],
  ['edge', ['WALL of ROOM', 'with TRIM']],
  ['break', ['ROOM to ROOM', 'with TRIM']],
])

/** The forms that a line of a word usually has, as the vocabulary writes them. */
export function usualForms(word: Word): readonly string[] {
  const usual = USUAL.get(word.word)
  if (usual !== undefined) return usual
  const one = word.needs?.find((form) => word.forms.includes(form)) ?? word.forms[0]
  return one === undefined ? [] : [one]
}

/** A word with what usually follows it, for a line that is indented so far. */
export function usualLine(word: Word, indent: number, filling: Filling): Insert {
  const start = word.home === 'file' ? `${word.word} ` : lineStart(indent, word.word).slice(indent)
  if (word.takes !== 'phrases') return [text(start), stop('')]
  const forms = usualForms(word)
  if (forms.length === 0) return [text(word.word)]
  return joined([text(start), ...phrasesInsert(forms, filling)])
}

function phrasesInsert(forms: readonly string[], filling: Filling): Insert {
  return forms.flatMap((form, i) => [
    ...(i === 0 ? [] : [text(', ')]),
    ...formInsert(compileForm(form).parts, filling),
  ])
}
