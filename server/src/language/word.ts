/** A kind of block, and the lines that stand in it; 'file' is column one. */
export type Home = 'file' | 'job' | 'room' | 'product' | 'floor' | 'prices'

/**
 * One first word of the language.
 *
 * A form is a pattern over one phrase. Capitals are figures and names (LENGTH, SIZE, NUMBER, COUNT,
 * PERCENT, ANGLE, DATE, WAY; ROOM, WALL, CORNER, PRODUCT, TRIM, NAME), small words stand as they are,
 * `a|b` is a choice of words. Where a choice after the first holds a blank, the whole form is the
 * choice: `kept|off and back|new`. A phrase matches the first form that fits it.
 */
export interface Word {
  readonly word: string
  readonly home: Home
  /** Words that it may stand under, two steps in: an opening under its wall. */
  readonly under?: readonly string[]
  /** 'text': plain text to the end of the line; 'name', 'names': a name, a list of names; else phrases. */
  readonly takes: 'text' | 'name' | 'names' | 'phrases'
  readonly forms: readonly string[]
  /** Forms of which one must be there; PATH for a text that must. */
  readonly needs?: readonly string[]
  /** Forms that a line may hold more than once. */
  readonly many?: readonly string[]
  /** The kind of block it opens. */
  readonly opens?: Home
  /** What it says, for the reference page, hover and completion. */
  readonly says: string
}

/** What may be touched by the tape's end. */
export const PLANES = 'base|wall|toe-kick|jamb'

/** What the rim of a floor may meet. */
export const EDGE_KINDS =
  'base kept|base off and back|base new|no base|tub|hearth|slider|cabinet|nosing|open edge|carpet'

export const WALL_WORDS: readonly string[] = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
  'slant',
]

type More = Pick<Word, 'needs' | 'many' | 'opens' | 'under'>

/** A line of phrases. */
export function line(
  home: Home,
  word: string,
  forms: readonly string[],
  says: string,
  more: Partial<More> = {},
): Word {
  return { word, home, takes: 'phrases', forms, says, ...more }
}

/** A line of plain text, a name or names. */
export function plain(
  home: Home,
  word: string,
  takes: 'text' | 'name' | 'names',
  says: string,
  more: Partial<More> = {},
): Word {
  return { word, home, takes, forms: [], says, ...more }
}

/** The tape line: for a file, or for one room. */
export function tapeLine(home: Home, says: string): Word {
  const forms = ['LENGTH + LENGTH per LENGTH', 'about LENGTH', 'LENGTH', `touching ${PLANES}`]
  return line(home, 'tape', forms, says)
}

/** The base line: for a file, or for one room. */
export function baseLine(home: Home, says: string): Word {
  return line(home, 'base', ['LENGTH thick', 'kept|off and back|new|none'], says)
}

const NOTABLE = [...WALL_WORDS, 'door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth']

/** Lines that every block carries. */
export function carried(home: Home): readonly Word[] {
  return [
    plain(home, 'note', 'text', 'A remark, kept and printed.', { under: NOTABLE }),
    plain(home, 'tag', 'text', 'A word and a text for other tools: carried, never computed.'),
    line(
      home,
      'hold',
      ['cleared DATE', 'by NAME', 'on NAME', 'NAME'],
      'Something that must be cleared before anything is ordered; by whom, on what paper, and when it was.',
      { needs: ['NAME'] },
    ),
    line(
      home,
      'accept',
      ['because NAME', 'NAME'],
      'A warning that was looked at: it is settled for this block. Its name is the message code, with blanks.',
      { needs: ['NAME'] },
    ),
  ]
}
