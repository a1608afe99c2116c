import { type Draw, weighted } from './draw.ts'
import type { Hand } from './notation.ts'

/** Where the parts of a job stand. */
export interface Layout {
  readonly root: string
  /** For each file its path and the files that it includes, as it names them. */
  readonly includes: ReadonlyMap<string, readonly string[]>
  readonly products: string
  /** Rooms go into these in turn. */
  readonly rooms: readonly string[]
}

const ROOT = 'random.floor'

export function layoutOf(draw: Draw): Layout {
  const [name, layout] = weighted(draw.dice, LAYOUTS)
  draw.has(`files: ${name}`)
  return layout
}

const layout = (
  products: string,
  rooms: readonly string[],
  includes: readonly (readonly [string, readonly string[]])[],
): Layout => ({ root: ROOT, includes: new Map(includes), products, rooms })

const LAYOUTS: readonly (readonly [number, readonly [string, Layout]])[] = [
  [60, ['one', layout(ROOT, [ROOT], [[ROOT, []]])]],
  [
    12,
    [
      'products apart',
      layout(
        'products.floor',
        [ROOT],
        [
          [ROOT, ['products.floor']],
          ['products.floor', []],
        ],
      ),
    ],
  ],
  [
    10,
    [
      'rooms apart',
      layout(
        ROOT,
        [ROOT, 'upper rooms.floor'],
        [
          [ROOT, ['upper rooms.floor']],
          ['upper rooms.floor', []],
        ],
      ),
    ],
  ],
  [
    9,
    [
      'a diamond',
      layout(
        'common.floor',
        ['east.floor', 'west.floor'],
        [
          [ROOT, ['east.floor', 'west.floor']],
          ['east.floor', ['common.floor']],
          ['west.floor', ['common.floor']],
          ['common.floor', []],
        ],
      ),
    ],
  ],
  [
    9,
    [
      'in folders',
      layout(
        'lists/products.floor',
        ['rooms/upper.floor', ROOT],
        [
          [ROOT, ['rooms/upper.floor']],
          ['rooms/upper.floor', ['../lists/products.floor']],
          ['lists/products.floor', []],
        ],
      ),
    ],
  ],
]

/** The line that says what lengths are in a file; where it would say the usual it may be left out. */
export function unitsLine({ unit, bare }: Hand, { dice, has }: Draw): string[] {
  if (unit === 'feet-inches' && bare === null && dice.chance(25)) {
    has('units: not said')
    return []
  }
  return [`units ${unit}${bare === null ? '' : `, bare ${bare}`}`]
}

/** The text of a file as some editor left it: comments, tabs, its line ends. */
export function asTyped(text: string, draw: Draw): string {
  const { dice, nasty, has } = draw
  let typed = text
  if (dice.chance(nasty ? 40 : 15)) {
    has('typed: comments')
    typed = typed.replace(/^.+$/gm, (line) => commented(line, draw))
  }
  if (dice.chance(nasty ? 25 : 8)) {
    has('typed: tabs')
    typed = typed.replace(/^ +/gm, (blanks) => '\t'.repeat(blanks.length / 2))
    typed = typed.replace(/ {2,}/g, '\t')
  }
  if (dice.chance(nasty ? 10 : 2)) {
    has('typed: a mark of byte order')
    typed = `\uFEFF${typed}`
  }
  const ending = weighted(dice, [
    [80, '\n'],
    [18, '\r\n'],
    [nasty ? 4 : 0, '\r'],
  ])
  if (ending !== '\n') has(`typed: ${ending === '\r' ? 'CR' : 'CRLF'}`)
  return ending === '\n' ? typed : typed.replaceAll('\n', ending)
}

function commented(line: string, { dice }: Draw): string {
  const way = dice.below(20)
  if (way === 0) return `${line}  # as she said, "twice"`
  return way === 1 ? `${line}\n# -----` : line
}
