import type { Dice } from '../../generate/dice.ts'
import { edited, entriesOf, treeOf } from './edit.ts'
import { namesOf, tokenEdits } from './tokens.ts'

/** The language's own words in capitals, or begun with one. */
export function withCapitals(text: string, dice: Dice): string {
  const edits = tokenEdits(treeOf(text), (token, role) => {
    if (role !== 'our word') return null
    const { text: word } = token
    return dice.pick([word, word.toUpperCase(), word.charAt(0).toUpperCase() + word.slice(1)])
  })
  return edited(text, edits)
}

/** Names where they are used, not where they are given, in other letters and with more blanks. */
export function withLooseNames(text: string, dice: Dice): string | null {
  const edits = usedNames(text)
    .filter(() => dice.chance(60))
    .map(({ span, text: name }) => ({
      span,
      text: dice.chance(50) ? name.toUpperCase() : name.replaceAll(' ', '   '),
    }))
  return edits.length === 0 ? null : edited(text, edits)
}

/** Names in quotes, where they are given and where they are used. */
export function withQuotes(text: string, dice: Dice): string | null {
  const given = entriesOf(treeOf(text)).flatMap((entry) =>
    entry.phrases.filter(({ form }) => form === 'called NAME').flatMap(({ names }) => names),
  )
  const edits = [...usedNames(text), ...given]
    .filter(({ span }) => text[span.start] !== '"' && dice.chance(50))
    .map(({ span, text: name }) => ({ span, text: `"${name}"` }))
  return edits.length === 0 ? null : edited(text, edits)
}

/** Straight apostrophes in names for typographic ones, here and there: they tell no two names apart. */
export function withApostrophes(text: string, dice: Dice): string | null {
  const names = entriesOf(treeOf(text)).flatMap(namesOf)
  const edits = names
    .filter((name) => name.text.includes("'") && dice.chance(60))
    .map(({ span, text: name }) => ({ span, text: name.replaceAll("'", '’') }))
  return edits.length === 0 ? null : edited(text, edits)
}

function usedNames(text: string) {
  return entriesOf(treeOf(text))
    .flatMap((entry) =>
      entry.word === 'rooms'
        ? namesOf(entry)
        : entry.phrases
            .filter(({ form }) => /ROOM|WALL|PRODUCT|CORNER/.test(form))
            .flatMap(({ names }) => names),
    )
    .filter((name) => !['outside', 'stair'].includes(name.key))
}
