import { exampleOn } from '../../language/examples.ts'
import type { Phrase } from '../../language/tree.ts'
import { wordIn } from '../../language/vocabulary.ts'
import type { Home } from '../../language/words.ts'
import { formSays } from '../words/form-says.ts'
import { wordExample } from '../words/word-examples.ts'
import type { Asked } from './asked.ts'
import { formula, type HoverPart, text, title } from './parts.ts'

/** What a first word says, and a line of it as it may be written; null for a word that is none here. */
export function wordParts({ block, entry, units }: Asked): readonly HoverPart[] | null {
  const home = entry === block ? 'file' : homeOf(block.word)
  const word = home === null ? undefined : wordIn(home, entry.word)?.word
  if (word === undefined) return null
  return [title(word.word), text(word.says), formula(wordExample(word, units))]
}

/** A phrase as it stands, what it says in its line, and how it is written where it could say more. */
export function phraseParts({ view, entry, units }: Asked, phrase: Phrase): readonly HoverPart[] {
  const { form, span } = phrase
  const says = formSays(entry.word, form)
  const written = exampleOn(entry.word, form, units)
  return [
    title(view.tree.text.slice(span.start, span.end)),
    ...(says === null ? [] : [text(says)]),
    ...(form.includes('|') ? [formula(written)] : []),
  ]
}

/** The kind of block that a word opens: lines below it are lines of that. */
function homeOf(blockWord: string): Home | null {
  return wordIn('file', blockWord)?.word.opens ?? null
}
