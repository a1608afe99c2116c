import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { EDGE_KINDS, WORDS } from '../../server/src/language/words.ts'

const SOURCE = new URL('../../server/src/job/', import.meta.url)
const FIGURE_OR_NAME =
  /\b(?:LENGTH|SIZE|NUMBER|COUNT|PERCENT|ANGLE|DATE|WAY|ROOM|WALL|CORNER|PRODUCT|TRIM|NAME)\b/

/** String literals that look like a form: they hold a figure, a name or a choice, and no sentence. */
function formsIn(text: string): readonly string[] {
  const literals = [...text.matchAll(/'([^'\n]*)'/g)].map(([, literal]) => literal!)
  return literals.filter(
    (literal) => (FIGURE_OR_NAME.test(literal) || literal.includes('|')) && !/[.":?]/.test(literal),
  )
}

it('every form that binding asks for is one of the vocabulary: a phrase never goes unread', () => {
  const known = new Set(WORDS.flatMap(({ forms }) => forms))
  const asked = readdirSync(SOURCE).flatMap((file) =>
    formsIn(readFileSync(new URL(file, SOURCE), 'utf8')),
  )
  expect(asked.length).toBeGreaterThan(60)
  // 'NAME' is the form of a listed name; the other two are cut out of forms.
  const elsewhere = ['NAME', 'NUMBER', ' LENGTH']
  expect(
    [...new Set(asked)].filter((form) => !known.has(form) && !elsewhere.includes(form)),
  ).toEqual([])
})

it('every form of the vocabulary is read by binding, or only kept and printed', () => {
  const source = readdirSync(SOURCE)
    .map((file) => readFileSync(new URL(file, SOURCE), 'utf8'))
    .join('\n')
  const kept = ['swings in|out', 'pocket', 'bifold', 'cased', 'because NAME']
  const ofTheFile = ['COUNT', 'bare inches|mm|cm|m']
  const imported = [EDGE_KINDS]
  const built = [/^(?:door|opening|pass-through|closet|alcove|hearth) LENGTH$/, /^LENGTH kerf a/]
  const unread = [...new Set(WORDS.flatMap(({ forms }) => forms))].filter(
    (form) => !source.includes(`'${form}'`) && !built.some((pattern) => pattern.test(form)),
  )
  expect(unread.sort()).toEqual([...kept, ...ofTheFile, ...imported].sort())
})
