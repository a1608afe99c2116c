import { compile } from '../../server/src/compile.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { work } from './clock.ts'
import { median } from './median.ts'
import { SHAPES } from './shapes.ts'
import { ms, table } from './table.ts'

/** A text as long as people write, in bytes. */
const LONGEST = 4096

const MOST = 100

/** The worst that so short a text can ask for, each warm: every shape, and the largest floors. */
export function smallTable(): string {
  const shapes = SHAPES.map(({ name, text }) => [name, longestWithin(text)] as const)
  const rows = [...shapes, ...LARGEST].map(([name, text]) => {
    const texts = new Map([['small.floor', text]])
    let pieces = 0
    const run = () => {
      const compiled = compile(texts, 'small.floor')
      if ('missing' in compiled) throw new Error('it includes nothing')
      pieces = compiled.floors.reduce((sum, floor) => sum + floor.published.pieces.length, 0)
      return estimateText(compiled)
    }
    for (let i = 0; i < 10; i += 1) run()
    const time = median(Array.from({ length: 5 }, () => work(run)))
    const count = pieces === 0 ? 'refused' : String(pieces)
    return [name, String(text.length), count, `${ms(time)}${time > MOST ? ' !' : ''}`]
  })
  return table(
    [`texts of ${LONGEST} bytes at most`, 'bytes', 'pieces', `estimate, at most ${MOST} ms`],
    rows,
  )
}

/** The shape with as many walls as the length allows. */
function longestWithin(text: (walls: number) => string): string {
  let walls = 32
  while (text(walls + 8).length <= LONGEST) walls += 8
  return text(walls)
}

/** Plain rooms as large as the planks allow, and one that is all passage. */
const LARGEST = [
  ['a hall of usual planks', plain('6 3/4" x 48"', 8, [`400' 0"`, `110' 0"`])],
  ['a hall of small planks', plain('3" x 12"', 3, [`80' 0"`, `60' 0"`])],
  ['a passage of five miles', plain('3" x 12"', 3, [`26400' 0"`, `3"`])],
  ['a passage of two miles', plain('3" x 12"', 3, [`10560' 0"`, `3"`])],
] as const

function plain(plank: string, stagger: number, [wide, deep]: readonly [string, string]): string {
  return [
    `floorscribe 1\njob Large\nunits feet-inches\ntape 1/16"\nwalls 4 1/2" thick\n`,
    `product plank\n  plank       ${plank}, 1/2" thick\n  box         10 planks`,
    `  joints      ${stagger}" stagger, ${stagger}" shortest end, 1" narrowest rip\n  gap         0"\n`,
    `room hall\n  north       ${wide}\n  east        ${deep}\n  south       ${wide}\n  west        ${deep}\n`,
    `floor all\n  rooms       hall\n  lay         plank, running east-west\n`,
  ].join('\n')
}
