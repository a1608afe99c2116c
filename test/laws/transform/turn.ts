import type { Entry, Phrase, Tree } from '../../../server/src/language/tree.ts'
import { type Edit, edited, entriesOf, treeOf } from './edit.ts'
import { waysOf } from './ways.ts'

const CLOCKWISE = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
]

/** The way that one looks after a quarter turn of the house to the right. */
function turnedWay(way: string): string {
  return CLOCKWISE[(CLOCKWISE.indexOf(way) + 2) % 8]!
}

const RUNS: ReadonlyMap<string, string> = new Map([
  ['east-west', 'north-south'],
  ['north-south', 'east-west'],
  ['north-east', 'north-west'],
  ['north-west', 'north-east'],
])

/** The whole house turned by a quarter turn to the right: every way in it is another one. */
export function turnedRight(text: string): string {
  const tree = treeOf(text)
  const edits = entriesOf(tree).flatMap((entry) => [
    ...headEdits(entry),
    ...sizesTurned(entry),
    ...entry.phrases.flatMap((phrase) => phraseEdits(tree, phrase)),
  ])
  return edited(text, edits)
}

function headEdits({ word, wordSpan }: Entry): readonly Edit[] {
  return CLOCKWISE.includes(word) ? [{ span: wordSpan, text: turnedWay(word) }] : []
}

const THINGS = ['column', 'island', 'stairwell', 'vent']

/** A size east and west by north and south is the other way round now. */
function sizesTurned({ word, phrases }: Entry): readonly Edit[] {
  if (!THINGS.includes(word)) return []
  return phrases
    .filter(({ form }) => form === 'SIZE')
    .map(({ span, measures }) => {
      const sides = measures[0]!.figure.text.split(/\s*[x×]\s*/i)
      return { span, text: sides.toReversed().join(' x ') }
    })
}

function phraseEdits(tree: Tree, phrase: Phrase): readonly Edit[] {
  const isRun =
    phrase.form.startsWith('running east-west') ||
    /^LENGTH (east-west|north-south)/.test(phrase.form)
  return waysOf(tree, phrase).map(({ span, way }) => ({
    span,
    text: isRun ? RUNS.get(way)! : turnedWay(way),
  }))
}
