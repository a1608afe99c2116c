import type { Dice } from '../../generate/dice.ts'
import { edited, entriesOf, OPENERS, treeOf, wholeOf } from './edit.ts'

const COMMENTS = ['# seen', '# north 3\' 0"', '#', '# room attic', '#  two   blanks', '# "quoted']

/** Comments at the ends of lines, and on lines of their own. */
export function withComments(text: string, dice: Dice): string {
  const lines = text.split('\n').map((line) => {
    const own = dice.chance(20) ? `${dice.pick(['', '  ', '    '])}${dice.pick(COMMENTS)}\n` : ''
    const isBare = line.trim() !== '' && !/(^|\s)#(\s|$)/.test(line)
    return own + (isBare && dice.chance(50) ? `${line}  ${dice.pick(COMMENTS)}` : line)
  })
  return lines.join('\n')
}

const REMARKS = [
  'note        radiator hides the corner',
  'tag         crew blue',
  'note        12\' 4", to hall',
]

/** Notes and tags in any block, between any two of its lines but a reading and its repeat. */
export function withRemarks(text: string, dice: Dice): string {
  const tree = treeOf(text)
  const openers = tree.blocks.filter((block) => OPENERS.includes(block.word))
  const edits = openers.flatMap((block) => {
    const lines = [block, ...block.under].flatMap((entry) =>
      entry === block ? [entry.line.span.end] : [wholeOf(tree, entry).end - 1],
    )
    return lines
      .filter((at) => tree.text[at] === '\n' && dice.chance(30))
      .map((at) => ({ span: { start: at, end: at }, text: `\n  ${dice.pick(REMARKS)}` }))
  })
  return edited(text, edits)
}

/** Notes that belong to one line: typed deeper, right below it. */
export function withDeepNotes(text: string, dice: Dice): string {
  const tree = treeOf(text)
  const walls = entriesOf(tree).filter((entry) => entry.word === 'door' || entry.word === 'closet')
  return edited(
    text,
    walls
      .filter(() => dice.chance(60))
      .map(({ line: { span } }) => ({
        span: { start: span.end, end: span.end },
        text: '\n    note      sticks in wet weather',
      })),
  )
}

/** Lines of the job that are printed or kept, never computed with. */
export function withHeading(text: string, dice: Dice): string | null {
  const lines = [
    '  site        4 Alder Row, flat #2',
    '  date        2027-04-12',
    `  revision    ${dice.between(1, 9)}, closet added`,
    '  hold        slab reading, by the lab, on report 12, cleared 2027-05-02',
  ].filter((line) => !text.includes(line.trim().slice(0, 4)) && dice.chance(60))
  if (lines.length === 0) return null
  return text.replace(/^job .*$/m, (job) => [job, ...lines].join('\n'))
}

/** A price book that nothing of the floor depends on. */
export function withPrices(text: string): string {
  return `${text}
prices for another trade
  date        2027-03-01
  currency    USD, 2 decimals
  labour      jamb undercut, 9.00 per side
`
}
