import type { Dice } from '../../generate/dice.ts'
import { edited, treeOf } from './edit.ts'
import { tokenEdits } from './tokens.ts'

/** Empty lines, and lines of blanks alone, before any line. */
export function withBlankLines(text: string, dice: Dice): string {
  const before = () =>
    dice.chance(40) ? `${dice.pick(['', '  ', '\t'])}\n`.repeat(dice.between(1, 3)) : ''
  return text.replace(/^/gm, before)
}

/** Blanks at the ends of lines. */
export function withTrailingBlanks(text: string, dice: Dice): string {
  return text.replace(/$/gm, () => (dice.chance(50) ? dice.pick([' ', '   ', '\t', '\u00a0']) : ''))
}

/** Every kind of blank that the language knows, in runs, wherever blanks part words of ours. */
const OTHER_BLANKS = ['\t', '\u00a0', '\u202f', '\u2009']

/** Blanks between words become others; lines keep their depth, for a remark's depth has a meaning. */
export function withOtherBlanks(text: string, dice: Dice): string {
  const run = () => dice.pick(OTHER_BLANKS).repeat(dice.between(1, 3))
  const edits = tokenEdits(treeOf(text), (token, role) => {
    if (role !== 'blank' || dice.chance(30)) return null
    const isIndent = /(^|[\r\n])$/.test(text.slice(0, token.span.start))
    return isIndent ? dice.pick(OTHER_BLANKS).repeat(token.text.length) : run()
  })
  return edited(text, edits)
}

const ENDINGS = ['\n', '\r\n', '\r']

/** Line ends of every system, mixed; '\r' before a blank line would be read with its '\n' as one. */
export function withOtherEndings(text: string, dice: Dice): string {
  return text.replace(/\n(?!\n)/g, () => dice.pick(ENDINGS)).replace(/\n\n/g, '\r\n\r\n')
}

/** The mark that some editors put at the start of a file. */
export function withByteOrderMark(text: string): string {
  return `\ufeff${text}`
}
