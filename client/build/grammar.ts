import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { compileForm, type Part } from '../../server/src/language/forms.ts'
import { WORDS, type Word } from '../../server/src/language/words.ts'
import {
  BLANKS,
  DASHES,
  FOOT_MARKS,
  INCH_MARKS,
  SLASHES,
  VULGAR,
} from '../../server/src/units/signs.ts'

/**
 * The TextMate grammar, made from the vocabulary: it colours a line by its first word before the server
 * has read it. `node client/build/grammar.ts` writes it anew; a test holds it against the vocabulary.
 */
const FILE = join(import.meta.dirname, '../../syntaxes/floor.tmLanguage.json')

interface Rule {
  readonly match?: string
  readonly begin?: string
  readonly end?: string
  readonly name?: string
  readonly contentName?: string
  readonly captures?: Captures
  readonly beginCaptures?: Captures
  readonly patterns?: readonly Rule[]
  readonly include?: string
}
type Captures = Readonly<Record<string, { readonly name: string }>>

/** Signs as the editor's regular expressions write them. */
const signs = (set: string) => set.replace(/\\u([0-9a-f]{4})/g, '\\x{$1}')

const B = signs(BLANKS)
const BLANK = `[${B}]`
const HASH = `#(?=${BLANK}|$)`
const NUMBER = `(?:\\p{Nd}+(?:[.,${signs(SLASHES)}]\\p{Nd}+)*[${VULGAR}]?|\\.\\p{Nd}+|[${VULGAR}])`
const RUN = `[${signs(DASHES)}]?${NUMBER}(?:(?:${BLANK}+|[${signs(DASHES)}])${NUMBER})*`
const MARK = `[${signs(FOOT_MARKS)}]{1,2}|[${signs(INCH_MARKS)}]|[%°º]`
const UNIT_WORD = '(?i:inches|inch|in|feet|foot|ft|mm|cm|m|degrees?)(?![\\p{L}\\p{Nd}_])'
/** A number's end is no letter's beginning, save for the `x` of a size. */
const ENDS = `(?![\\p{L}_])|(?=[xX×]${BLANK}*[\\p{Nd}.${VULGAR}])`
const WORD_STARTS = '(?<![\\p{L}\\p{Nd}_-])'
const WORD_ENDS = '(?![\\p{L}\\p{Nd}_-])'
/** A name stops at a comma, a remark, a doubt, and before a word that joins it to another. */
const NAME_ENDS = `(?=${BLANK}*(?:[,?]|$)|${BLANK}+#(?:${BLANK}|$)|${BLANK}+(?i:to|of|and|with|from|because)${BLANK})`
const NAME = `"[^"]*"|[^${B},?"#][^,?"]*?${NAME_ENDS}`

export function grammar() {
  return {
    $schema: 'https://json.schemastore.org/tmlanguage.json',
    name: 'Floorscribe',
    scopeName: 'source.floor',
    patterns: [
      { include: '#remark' },
      ...lines('file', (words) => `^(?:\\x{FEFF})?(?i:(${words}))(?=[${B},]|$)`),
      ...lines('block', (words) => `^${BLANK}+(?i:(${words}))(?=[${B},]|$)`),
    ],
    repository: {
      remark: { match: `(?:^|(?<=${BLANK}))${HASH}.*$`, name: 'comment.line.number-sign.floor' },
      reading: reading(),
      unread: { match: '\\?', name: 'constant.language.unread.floor' },
      quoted: {
        match: '["\\x{201c}][^"\\x{201d}]*["\\x{201d}]',
        name: 'string.quoted.double.floor',
      },
      comma: { match: ',', name: 'punctuation.separator.comma.floor' },
    },
  }
}

function reading(): Rule {
  return {
    match: `(?<![\\p{L}\\p{Nd}_])(${RUN})(?:${BLANK}*(${MARK}|${UNIT_WORD}))?(?:${ENDS})`,
    captures: {
      1: { name: 'constant.numeric.reading.floor' },
      2: { name: 'keyword.other.unit.floor' },
    },
  }
}

/** A rule for each set of words that are coloured alike. */
function lines(where: 'file' | 'block', begin: (words: string) => string): readonly Rule[] {
  const groups = new Map<
    string,
    { readonly rule: Omit<Rule, 'begin'>; readonly words: Set<string> }
  >()
  for (const word of WORDS.filter(({ home }) => (home === 'file') === (where === 'file'))) {
    const rule = restOf(word)
    const key = JSON.stringify(rule)
    const group = groups.get(key) ?? { rule, words: new Set<string>() }
    groups.set(key, { rule, words: group.words.add(word.word) })
  }
  return [...groups.values()].map(({ rule, words }) => ({ begin: begin(choice(words)), ...rule }))
}

function restOf(word: Word): Omit<Rule, 'begin'> {
  const keyword =
    word.opens === undefined ? 'keyword.control.line.floor' : 'keyword.control.block.floor'
  const beginCaptures = { 1: { name: keyword } }
  const common = { end: '$', beginCaptures }
  const gives =
    word.opens === undefined ? 'variable.other.name.floor' : 'entity.name.type.block.floor'
  switch (word.takes) {
    case 'text':
      return { ...common, patterns: [remark, carried('string.unquoted.floor')] }
    case 'name':
    case 'names':
      return { ...common, patterns: [remark, quoted, comma, carried(gives, ',')] }
    case 'phrases':
      return {
        ...common,
        patterns: [remark, ...named(word), readings, unread, quoted, comma, plain(word)],
      }
  }
}

const remark = { include: '#remark' }
const quoted = { include: '#quoted' }
const comma = { include: '#comma' }
const readings = { include: '#reading' }
const unread = { include: '#unread' }

/** Text as it stands, up to a remark or one of the signs given. */
function carried(name: string, upTo = ''): Rule {
  const stop = `(?=${BLANK}+${HASH}|${BLANK}*$${upTo === '' ? '' : `|${BLANK}*[${upTo}]`})`
  return { match: `[^${B}${upTo}].*?${stop}`, name }
}

/** Words that a name follows, such as `to` and `called`. */
function named({ forms }: Word): readonly Rule[] {
  const before = forms
    .map((form) => compileForm(form).parts)
    .flatMap((parts) => parts.filter((_, i) => parts[i + 1]?.kind === 'name').flatMap(wordsOf))
  if (before.length === 0) return []
  const captures = {
    1: { name: 'keyword.operator.word.floor' },
    2: { name: 'variable.other.name.floor' },
  }
  const word = `${WORD_STARTS}(?i:(${choice(new Set(before))}))`
  const isPhrase = `(?i:${choice(new Set(phraseWords(forms)))})${WORD_ENDS}`
  return [{ match: `${word}${BLANK}+(?!${isPhrase})(${NAME})`, captures }]
}

/** The words of a line's phrases, and those that any reading may have before or behind it. */
function plain({ forms }: Word): Rule {
  const words = choice(new Set([...phraseWords(forms), 'about', 'within']))
  return {
    match: `${WORD_STARTS}(?i:${words})${WORD_ENDS}`,
    name: 'keyword.operator.word.floor',
  }
}

function phraseWords(forms: readonly string[]): readonly string[] {
  return forms.flatMap((form) => compileForm(form).parts.flatMap(wordsOf))
}

function wordsOf(part: Part): readonly string[] {
  if (part.kind === 'words') return part.words.filter((word) => word !== '+')
  if (part.kind === 'choice') return part.options.map((option) => option.join(' '))
  return []
}

/** Longer words first, so that `north-east` is no `north`. */
function choice(words: ReadonlySet<string>): string {
  return [...words]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map((word) => word.replaceAll(' ', `${BLANK}+`))
    .join('|')
}

if (import.meta.main) writeFileSync(FILE, `${JSON.stringify(grammar(), null, 2)}\n`)
