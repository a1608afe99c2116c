import type { Fixture } from './house.ts'
import { named } from './names.ts'
import { distance } from './notation.ts'
import { line, plain, reading, type Sheet } from './sheet.ts'
import type { WallWords } from './wall-words.ts'

const isPassage = ({ kind }: Fixture) =>
  kind === 'door' || kind === 'opening' || kind === 'pass-through'

/** The lines of what stands on one wall: under it, or further down and naming it. */
export interface OnWallLines {
  readonly under: readonly string[]
  readonly below: readonly string[]
}

export function onWallLines(sheet: Sheet, index: number): OnWallLines {
  const { dice, has } = sheet.draw
  const here = sheet.room.fixtures
    .filter(({ wall, isWritten }) => wall === index && isWritten)
    .sort((a, b) => a.left - b.left)
  if (here.length === 0) return { under: [], below: [] }
  const wall = sheet.words[index]!
  if (dice.chance(12)) {
    has('place: in parts')
    return {
      under: [partsLine(here, wall, sheet), ...here.map((one) => inParts(one, sheet))],
      below: [],
    }
  }
  if (dice.chance(10)) {
    has('place: in WALL')
    const said = here.map((one) => {
      const at = `in ${named(wall.label, sheet.draw)}`
      return line(1, one.kind, [...placed(one, index, sheet), at, ...more(one, sheet)], sheet.draw)
    })
    return { under: [], below: said }
  }
  const under = here.flatMap((one) => {
    const phrases = [...placed(one, index, sheet), ...more(one, sheet)]
    return [line(2, one.kind, phrases, sheet.draw), ...againLine(one, sheet)]
  })
  return { under, below: [] }
}

function againLine(one: Fixture, sheet: Sheet): string[] {
  const canBe = isPassage(one) || one.kind === 'closet'
  if (!sheet.isDoubted || !canBe || !sheet.draw.dice.chance(5)) return []
  sheet.draw.has('reading: again')
  return [line(2, 'again', [reading(sheet, one.width)], sheet.draw)]
}

/** Stretches of plain wall and the widths between them, along one hook. */
function partsLine(here: readonly Fixture[], wall: WallWords, sheet: Sheet): string {
  let reached = 0
  const parts = here.flatMap(({ kind, left, width }) => {
    const before = left - reached
    reached = left + width
    return [plain(sheet, before), `${kind} ${plain(sheet, width)}`]
  })
  const rest = distance(wall.east, wall.north) - reached
  return line(2, 'parts', [...parts, plain(sheet, rest)], { ...sheet.draw, nasty: false })
}

/** The line of a thing whose place the parts tell. */
function inParts(one: Fixture, sheet: Sheet): string {
  return line(2, one.kind, [plain(sheet, one.width), ...more(one, sheet)], sheet.draw)
}

/** Its width and its place: from a side, from the wall that meets it there, or both jambs off one hook. */
function placed(one: Fixture, index: number, sheet: Sheet): string[] {
  const { dice, has } = sheet.draw
  const wall = sheet.words[index]!
  const right = distance(wall.east, wall.north) - one.left - one.width
  const isLeft = dice.chance(50)
  const [from, side] = isLeft ? [one.left, 'left'] : [right, 'right']
  const way = dice.below(100)
  if (way < 15) {
    has('place: both jambs')
    const both = `${plain(sheet, from)} and ${plain(sheet, from + one.width)} from ${side}`
    return dice.chance(30) ? [reading(sheet, one.width), both] : [both]
  }
  const width = reading(sheet, one.width)
  const end = endName(index, isLeft ? -1 : 1, sheet)
  if (way < 30 && end !== null) {
    has('place: from WALL')
    return [width, `${reading(sheet, from)} from ${named(end, sheet.draw)}`]
  }
  has(`place: from ${side}`)
  return [width, `${reading(sheet, from)} from ${side}`]
}

/** What the wall that meets one at an end is called; null where the wall at the other end is called so too. */
function endName(index: number, step: -1 | 1, { words }: Sheet): string | null {
  const end = words.at((index + step) % words.length)!
  const other = words.at((index - step) % words.length)!
  const name = end.isNamed ? end.label : end.word
  return other.word === name || other.label === name ? null : name
}

function more(one: Fixture, sheet: Sheet): string[] {
  const { dice, has } = sheet.draw
  const called = one.called === null ? [] : [`called ${named(one.called, sheet.draw)}`]
  if (isPassage(one)) return [...passage(one, sheet), ...called]
  const deep = `${reading(sheet, one.deep)} deep`
  if (one.kind === 'closet') return [deep, ...closet(one, sheet), ...called]
  if (one.kind === 'alcove' || !dice.chance(25)) return [deep, ...called]
  has('hearth: with a gap')
  return [deep, `${plain(sheet, dice.pick([0, 4, 8]))} gap`, ...called]
}

function passage(one: Fixture, sheet: Sheet): string[] {
  const { dice, has } = sheet.draw
  const own = thickness(one, sheet)
  const words = [
    ...(dice.chance(15) ? [`with ${dice.pick(['t moulding', 'reducer', 'end cap'])}`] : []),
    ...(one.kind === 'door' ? doorWords(sheet) : []),
    ...(one.kind !== 'pass-through' && dice.chance(10) ? ['cased'] : []),
  ]
  for (const word of words) has(`opening: ${word.replace(/^with .*/, 'with a trim')}`)
  return [`to ${named(one.to, sheet.draw)}`, ...own, ...words]
}

function doorWords({ draw: { dice } }: Sheet): string[] {
  return dice.pick([[], [], ['swings in'], ['swings out'], ['sliding'], ['pocket'], ['bifold']])
}

/** Said where it is not the job's, and now and then where it is. */
function thickness({ thick }: Fixture, sheet: Sheet): string[] {
  const { draw } = sheet
  if (draw.isThickSaid && thick === draw.thick && !draw.dice.chance(10)) return []
  draw.has('thickness: on the line')
  return [`${plain(sheet, thick)} thick`]
}

/** What of a closet lies past its opening, by its inside and its returns: two of the three tell it. */
function closet(one: Fixture, sheet: Sheet): string[] {
  const { draw } = sheet
  const [left, right] = one.returns
  const own = [...thickness(one, sheet), ...(draw.dice.chance(10) ? ['cased'] : [])]
  if (right === 0) return own
  const inside = `${reading(sheet, left + one.width + right)} inside`
  const leftReturn = `${reading(sheet, left)} left return`
  const rightReturn = `${reading(sheet, right)} right return`
  const said = draw.dice.pick([
    [inside, leftReturn],
    [inside, rightReturn],
    [leftReturn, rightReturn],
    [inside, leftReturn, rightReturn],
  ])
  draw.has(
    `closet: ${said.length === 3 ? 'inside and both returns' : said.includes(inside) ? 'inside and a return' : 'both returns'}`,
  )
  return [...said, ...own]
}
