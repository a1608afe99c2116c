import { exampleOf } from '../../server/src/language/examples.ts'
import { WORDS, type Word } from '../../server/src/language/words.ts'
import type { Dice } from '../generate/dice.ts'

/** Names that a job's own would be mistaken for, if a table of names were a plain object. */
const NAMES = ['hall', 'den', 'bunk', 'river larch', '__proto__', 'constructor', 'toString', 'then']

/** Figures at, below and above what is accepted, and notations that other tools take for numbers. */
const FIGURES = [
  '0', '0"', '0 mm', '1/64"', '1/128"', '1/0', '7/16/2', '11 15/16"', '12"', `12' 12"`, `0' 0"`, '1"', '2"',
  `4'`, `12' 4 1/2"`, `12'4-1/2"`, '148 1/2"', `12.375'`, '3.76 m', '376 cm', '3760 mm', '0.1 mm', '0.05 mm',
  `30'`, `100'`, '48"', '7" x 48"', '7 x', '10%', '0%', '100%', '1000%', '-100%', '0°', '45°', '90°', '180°',
  '360°', '359.9 °', '?', `12' 4"?`, `about 9'`, '9 ft within 1/4"', '2026-02-30', '2027-04-12', '9', '-1',
  '−3', '-0', '.5', '5.', '0x10', '1e309', '1_000', '1,000', '1.234,5', '100000 m', '100000.1 m', '99999999',
  '9007199254740993', '1'.repeat(40), '1'.repeat(41), `0.${'0'.repeat(39)}1`,
] // biome-ignore format: a table

/** Marks of tape notation in every sign that people type or paste, and what may stand between words. */
const MARKS = [
  "'", '"', '’', '”', '“', '‘', '′', '″', '‴', "''", '`', '´', '/', '⁄', '½', '¼', '¾', '⅛', '⅜', '⅝', '⅞', '⅓',
  '10½', 'x', '×', '*', '+', '-', '−', '–', '—', ',', '.', ';', ':', '?', '#', '%', '°', 'º', '(', '[', '{', '\\',
  ' ', '  ', '\t', '\u00a0', '\u202f', '\u2009', '\n', '\r\n', '\r', '\n  ', '\n    ', '\v', '\f', '\u0085',
  '\u2028', '\u2029', '\ufeff', '\u200b', '\u200d', '\u00ad', '\u202e', '\u2066', '\u0000', '\u001b', '\u007f',
  '\ud800', '\udfff', '１２', '٣', 'é', 'e\u0301', 'İ', 'ß', '🏠', '\ufffd', '<<<<<<< ours', '=======',
  '>>>>>>> theirs', '&', '<', '>', '=', '@',
] // biome-ignore format: a table

/** Every word of the language: first words, and those inside its phrases. */
const LANGUAGE = [
  ...new Set(
    WORDS.flatMap(({ word, forms }) => [word, ...forms.flatMap((form) => form.split(/[ |]/))]),
  ),
].filter((word) => !/^[A-Z]+$/.test(word))

/** One thing that means something somewhere. */
export function scrap(dice: Dice): string {
  const kind = dice.below(100)
  if (kind < 35) return dice.pick(FIGURES)
  if (kind < 65) return dice.pick(LANGUAGE)
  if (kind < 90) return dice.pick(MARKS)
  return dice.pick(NAMES)
}

/** A figure alone: what changes a job's numbers and leaves its lines whole. */
export function figure(dice: Dice): string {
  return dice.pick(FIGURES)
}

/** A line of the language with some of its phrases, as the messages show them, names filled in. */
export function madeLine(dice: Dice): string {
  const word = dice.pick(WORDS)
  const indent = word.home === 'file' ? '' : word.under && dice.chance(80) ? '    ' : '  '
  return `${indent}${word.word} ${contentOf(word, dice)}`.trimEnd()
}

function contentOf({ takes, forms, needs = [] }: Word, dice: Dice): string {
  if (takes === 'text') return dice.pick(['products.floor', 'a remark', '', ...NAMES])
  if (takes === 'name') return dice.pick(NAMES)
  if (takes === 'names') return [dice.pick(NAMES), dice.pick(NAMES)].join(', ')
  if (forms.length === 0) return ''
  const more = Array.from({ length: dice.below(3) }, () => dice.pick(forms))
  const wanted = needs.length > 0 ? [dice.pick(needs), ...more] : [dice.pick(forms), ...more]
  return wanted.map((form) => filled(form, dice)).join(', ')
}

const WALLS = ['north', 'east', 'south', 'west']

/** A phrase of a form: one of each choice, and names in place of capitals. */
function filled(form: string, dice: Dice): string {
  if (/\|[^| ]+ /.test(form) && !/[A-Z]/.test(form)) return dice.pick(form.split('|'))
  return form
    .split(' ')
    .map((part) => {
      if (part.includes('|')) return dice.pick(part.split('|'))
      if (part === 'WALL') return dice.pick(WALLS)
      if (part === 'CORNER') return dice.pick(['north-west', 'south-east', 'throat'])
      if (part === 'TRIM') return 't moulding'
      if (part === 'ROOM' || part === 'PRODUCT' || part === 'NAME') return dice.pick(NAMES)
      return exampleOf(part)
    })
    .join(' ')
}
