/** One line of a job: its word, and its phrases parted by commas. */
export interface Line {
  readonly file: string
  readonly number: number
  readonly isIndented: boolean
  readonly word: string
  readonly phrases: readonly string[]
  /** All that stands behind the word. */
  readonly rest: string
}

/** A line in column one, and the lines below it. */
export interface Block {
  readonly head: Line
  readonly lines: readonly Line[]
}

/** The words that open a block take a name; every other word of column one speaks for the file. */
const OPENING = ['job', 'room', 'product', 'floor', 'prices']

export function blocksOf(file: string, text: string): readonly Block[] {
  const blocks: { head: Line; lines: Line[] }[] = []
  for (const [index, written] of text.split(/\r\n|\r|\n/).entries()) {
    const line = lineOf(file, index + 1, written)
    if (line === null) continue
    if (!line.isIndented) blocks.push({ head: line, lines: [] })
    else blocks.findLast(({ head }) => OPENING.includes(head.word))?.lines.push(line)
  }
  return blocks
}

function lineOf(file: string, number: number, written: string): Line | null {
  const said = written
    .replace(/^\uFEFF/, '')
    .replace(/[\t\u00a0\u202f]/g, ' ')
    .replace(/^ *#.*$|(^| )#( .*)?$/, '')
  const [, indent = '', word = '', rest = ''] = /^( *)(\S+)(?: +(.*))?$/.exec(said.trimEnd()) ?? []
  if (word === '') return null
  const phrases = rest.split(',').map((phrase) => phrase.trim())
  const isSquare = /^ *out +of +square$/i.test(said.trimEnd())
  return {
    file,
    number,
    isIndented: indent !== '',
    word: isSquare ? 'out of square' : word.toLowerCase(),
    phrases: rest === '' ? [] : phrases.filter((phrase) => phrase !== ''),
    rest: rest.trim(),
  }
}

/** What two spellings of one name have in common: no capitals, single blanks, straight apostrophes. */
export function nameKey(name: string): string {
  return name
    .trim()
    .replace(/^["\u201c](.*)["\u201d]$/, '$1')
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()
}
