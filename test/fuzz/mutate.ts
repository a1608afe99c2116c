import type { Dice } from '../generate/dice.ts'
import { figure, madeLine, scrap } from './dictionary.ts'

/** Longer texts add time and no new state. */
const LONGEST = 8000

/**
 * A text near to one of a corpus: a few changes of characters, tokens, lines, or a splice with another.
 * The same dice give the same text.
 */
export function mutant(corpus: readonly string[], dice: Dice): string {
  let text = dice.pick(corpus)
  for (let left = changes(dice); left > 0; left--) text = changed(text, corpus, dice)
  return text.length <= LONGEST ? text : text.slice(0, LONGEST)
}

/** Mostly one: what a single slip does is seen alone; now and then a handful. */
function changes(dice: Dice): number {
  if (dice.chance(50)) return 1
  return dice.chance(80) ? dice.between(2, 4) : dice.between(5, 12)
}

type Change = (text: string, dice: Dice, corpus: readonly string[]) => string

/** How often in a hundred, and what. */
const CHANGES: readonly (readonly [number, Change])[] = [
  [24, otherFigure],
  [10, otherDigit],
  [8, tokenGone],
  [6, tokenTwice],
  [6, tokensSwapped],
  [8, tokenReplaced],
  [6, scrapAdded],
  [3, charactersGone],
  [2, characterAdded],
  [6, lineGone],
  [5, lineTwice],
  [4, linesSwapped],
  [5, lineOfAnother],
  [5, lineMade],
  [2, spliced],
]

const ALL = CHANGES.reduce((sum, [share]) => sum + share, 0)

function changed(text: string, corpus: readonly string[], dice: Dice): string {
  let at = dice.below(ALL)
  for (const [share, change] of CHANGES) {
    if (at < share) return change(text, dice, corpus)
    at -= share
  }
  return text
}

/** A run of letters, of digits, of blanks, or one sign. */
const TOKEN = /[A-Za-z]+|\d+|[ \t]+|\r\n|./gsu

export function tokensOf(text: string): readonly string[] {
  return text.match(TOKEN) ?? []
}

/** Tokens from a window: cutting up a whole job for one change would be most of the work. */
function inWindow(text: string, dice: Dice, change: (tokens: string[]) => void): string {
  const start = dice.below(text.length + 1)
  const end = start + 60
  const tokens = [...tokensOf(text.slice(start, end))]
  if (tokens.length > 0) change(tokens)
  return text.slice(0, start) + tokens.join('') + text.slice(end)
}

function tokenGone(text: string, dice: Dice): string {
  return inWindow(text, dice, (tokens) => tokens.splice(dice.below(tokens.length), 1))
}

function tokenTwice(text: string, dice: Dice): string {
  return inWindow(text, dice, (tokens) => {
    const at = dice.below(tokens.length)
    tokens.splice(at, 0, ...(dice.chance(50) ? [tokens[at]!] : [tokens[at]!, ' ']))
  })
}

function tokensSwapped(text: string, dice: Dice): string {
  return inWindow(text, dice, (tokens) => {
    const [a, b] = [dice.below(tokens.length), dice.below(tokens.length)]
    const kept = tokens[a]!
    tokens[a] = tokens[b]!
    tokens[b] = kept
  })
}

function tokenReplaced(text: string, dice: Dice): string {
  return inWindow(text, dice, (tokens) => {
    tokens[dice.below(tokens.length)] = scrap(dice)
  })
}

function scrapAdded(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  return text.slice(0, at) + scrap(dice) + text.slice(at)
}

const FIGURE = /(?:\d+(?:[./]\d+)?(?:['"]| (?=\d))*)+/g

/** One figure of the text becomes another: the line stays whole, and the job goes another way. */
function otherFigure(text: string, dice: Dice, corpus: readonly string[]): string {
  const figures = [...text.matchAll(FIGURE)]
  if (figures.length === 0) return scrapAdded(text, dice)
  const one = dice.pick(figures)
  const others = dice.chance(50) ? figures : [...dice.pick(corpus).matchAll(FIGURE)]
  const other = others.length === 0 || dice.chance(30) ? figure(dice) : dice.pick(others)[0]
  return text.slice(0, one.index) + other + text.slice(one.index + one[0].length)
}

function otherDigit(text: string, dice: Dice): string {
  const digits = [...text.matchAll(/\d/g)]
  if (digits.length === 0) return scrapAdded(text, dice)
  const { index } = dice.pick(digits)
  return text.slice(0, index) + dice.below(10) + text.slice(index + 1)
}

function charactersGone(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  return text.slice(0, at) + text.slice(at + (dice.chance(70) ? 1 : dice.between(2, 40)))
}

function characterAdded(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  const code = dice.chance(70) ? dice.below(128) : dice.below(0x10000)
  return text.slice(0, at) + String.fromCharCode(code) + text.slice(at)
}

function inLines(text: string, change: (lines: string[]) => void): string {
  const lines = text.split('\n')
  change(lines)
  return lines.join('\n')
}

function lineGone(text: string, dice: Dice): string {
  return inLines(text, (lines) => lines.splice(dice.below(lines.length), 1))
}

function lineTwice(text: string, dice: Dice): string {
  return inLines(text, (lines) => {
    const line = dice.pick(lines)
    lines.splice(dice.below(lines.length), 0, line)
  })
}

function linesSwapped(text: string, dice: Dice): string {
  return inLines(text, (lines) => {
    const at = dice.below(lines.length)
    const next = dice.chance(70) ? (at + 1) % lines.length : dice.below(lines.length)
    const kept = lines[at]!
    lines[at] = lines[next]!
    lines[next] = kept
  })
}

function lineOfAnother(text: string, dice: Dice, corpus: readonly string[]): string {
  const line = dice.pick(dice.pick(corpus).split('\n'))
  return inLines(text, (lines) => lines.splice(dice.below(lines.length), 0, line))
}

function lineMade(text: string, dice: Dice): string {
  return inLines(text, (lines) => lines.splice(dice.below(lines.length + 1), 0, madeLine(dice)))
}

/** The head of one text and the tail of another, each cut at a line. */
function spliced(text: string, dice: Dice, corpus: readonly string[]): string {
  const lines = text.split('\n')
  const others = dice.pick(corpus).split('\n')
  return [
    ...lines.slice(0, dice.below(lines.length)),
    ...others.slice(dice.below(others.length)),
  ].join('\n')
}
