import type { Block, Entry, Phrase, Tree } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { blocksNamed, type Edit, edited, textOf, treeOf, wholeOf } from './edit.ts'
import { groupsOf } from './walls.ts'

const ON_WALL = ['door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth']

interface OnWall {
  readonly line: Entry
  readonly wall: Entry
  readonly room: Block
}

/** What stands on walls, under them, in all rooms. */
function onWalls(tree: Tree): readonly OnWall[] {
  return blocksNamed(tree, 'room').flatMap((room) =>
    groupsOf(room).walls.flatMap(({ wall }) =>
      wall.under.filter(({ word }) => ON_WALL.includes(word)).map((line) => ({ line, wall, room })),
    ),
  )
}

/** Null too where the line was read to a plane of its own: it is no part of the same wall's length. */
function lengthOf({ phrases }: Entry, form = 'LENGTH'): number | null {
  if (phrases.some((phrase) => phrase.form.startsWith('touching'))) return null
  const figure = phrases.find((phrase) => phrase.form === form)?.measures[0]?.figure
  return figure?.kind === 'length' ? figure.nm : null
}

function placeOf({ phrases }: Entry): Phrase | null {
  return phrases.find(({ form }) => form === 'LENGTH from left|right') ?? null
}

const inMillimetres = (nm: number) => `${nm / 1_000_000} mm`

/** Distances told from the other end of their wall: what wall and width leave. */
export function fromTheOtherEnd(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const edits = onWalls(tree).flatMap(({ line, wall }): readonly Edit[] => {
    const place = placeOf(line)
    const [whole, width] = [lengthOf(wall), lengthOf(line)]
    const hasRepeat = [wall, line].some((entry) => entry.under.some(({ word }) => word === 'again'))
    if (place === null || whole === null || width === null || hasRepeat || dice.chance(30))
      return []
    const figure = place.measures[0]!.figure
    if (figure.kind !== 'length') return []
    const side = place.choices[0] === 'left' ? 'right' : 'left'
    const rest = whole - width - figure.nm
    return [{ span: place.span, text: `${inMillimetres(rest)} from ${side}` }]
  })
  return edits.length === 0 ? null : edited(text, edits)
}

/** Width and one distance told as both jambs off one hook. */
export function asBothJambs(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const edits = onWalls(tree).flatMap(({ line }): readonly Edit[] => {
    const place = placeOf(line)
    const width = line.phrases.find(({ form }) => form === 'LENGTH')
    const nm = lengthOf(line)
    const isRepeated = line.under.some(({ word }) => word === 'again')
    const figure = place?.measures[0]?.figure
    if (!place || !width || nm === null || figure?.kind !== 'length' || isRepeated) return []
    if (dice.chance(30)) return []
    const far = `${inMillimetres(figure.nm)} and ${inMillimetres(figure.nm + nm)} from ${place.choices[0]}`
    return [{ span: place.span, text: far }]
  })
  return edits.length === 0 ? null : edited(text, edits)
}

/** Openings told at the end of their room, with the wall they are in, for under it. */
export function inNamedWalls(text: string): string | null {
  const tree = treeOf(text)
  const moved = onWalls(tree).filter(({ line, wall, room }) => {
    const label = labelOf(wall, room)
    return label !== null && line.under.length === 0 && placeOf(line) !== null
  })
  if (moved.length === 0) return null
  const taken = moved.map(({ line }): Edit => ({ span: wholeOf(tree, line), text: '' }))
  const put = [...Map.groupBy(moved, ({ room }) => room)].map(([room, lines]): Edit => {
    const { end } = wholeOf(tree, room)
    const texts = lines.map(({ line, wall }) =>
      withPhrase(textOf(tree, line), `in ${labelOf(wall, room)}`),
    )
    return {
      span: { start: end, end },
      text: `${tree.text[end - 1] === '\n' ? '' : '\n'}${texts.join('')}`,
    }
  })
  return edited(text, [...taken, ...put])
}

/** What a wall may be called from elsewhere in its room. */
function labelOf(wall: Entry, room: Block): string | null {
  const own = wall.phrases.find(({ form }) => form === 'called NAME')?.names[0]
  if (own !== undefined)
    return own.text.match(/\b(to|of|and|about|within)\b|^\d/i) ? `"${own.text}"` : own.text
  const alike = groupsOf(room).walls.filter((other) => other.wall.word === wall.word)
  return alike.length === 1 && wall.word !== 'slant' ? wall.word : null
}

function withPhrase(line: string, phrase: string): string {
  const [, said = '', comment = ''] = /^(.*?)(\s+#(?:\s.*)?)?\s*$/.exec(line.trimEnd())!
  return `  ${said.trim()}, ${phrase}${comment}\n`
}

/** The parts of a wall put in the place of the distances of what stands on it. */
export function inParts(text: string): string | null {
  const tree = treeOf(text)
  const edits = blocksNamed(tree, 'room').flatMap((room) =>
    groupsOf(room).walls.flatMap(({ wall }) => partsOf(tree, wall)),
  )
  return edits.length === 0 ? null : edited(text, edits)
}

interface OnOneWall {
  readonly line: Entry
  readonly place: Phrase
  readonly from: number
  readonly width: number
}

function partsOf(tree: Tree, wall: Entry): readonly Edit[] {
  const whole = lengthOf(wall)
  const lines = wall.under.filter(({ word }) => ON_WALL.includes(word))
  if (whole === null || lines.length === 0) return []
  if (wall.under.some(({ word }) => word === 'parts' || word === 'again')) return []
  const placed = lines.flatMap((line) => placedOn(line, whole))
  if (placed.length < lines.length) return []
  const inOrder = [...placed].sort((a, b) => a.from - b.from)
  // Two of a kind are told apart by their order alone.
  const isTold = inOrder.every(
    ({ line }, i) => i === 0 || lines.indexOf(line) > lines.indexOf(inOrder[i - 1]!.line),
  )
  if (!isTold) return []
  const said: string[] = []
  let at = 0
  for (const { line, from, width } of inOrder) {
    if (from > at) said.push(inMillimetres(from - at))
    said.push(`${line.word} ${inMillimetres(width)}`)
    at = from + width
  }
  if (whole > at) said.push(inMillimetres(whole - at))
  const { end } = wall.line.span
  return [
    { span: { start: end, end }, text: `\n    parts     ${said.join(', ')}` },
    ...placed.map(({ place }) => ({ span: withComma(tree.text, place), text: '' })),
  ]
}

function placedOn(line: Entry, whole: number): readonly OnOneWall[] {
  const place = placeOf(line)
  const width = lengthOf(line)
  const figure = place?.measures[0]?.figure
  const isFirst = line.phrases[0] === place
  if (!place || isFirst || width === null || figure?.kind !== 'length' || line.under.length > 0)
    return []
  const from = place.choices[0] === 'left' ? figure.nm : whole - width - figure.nm
  return [{ line, place, from, width }]
}

/** A phrase with the comma before it. */
function withComma(text: string, { span }: Phrase): Edit['span'] {
  return { start: text.lastIndexOf(',', span.start), end: span.end }
}

/** Walls and widths read a second time, to the same mark. */
export function readAgain(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const lines = blocksNamed(tree, 'room')
    .flatMap((room) => groupsOf(room).walls.map(({ wall }) => wall))
    .filter((wall) => lengthOf(wall) !== null && !wall.under.some(({ word }) => word === 'again'))
    .filter(() => dice.chance(50))
  const edits = lines.map((wall): Edit => {
    const { end } = wall.line.span
    return { span: { start: end, end }, text: `\n    again     ${inMillimetres(lengthOf(wall)!)}` }
  })
  return edits.length === 0 ? null : edited(text, edits)
}

/** One straight wall told as two in line. */
export function withWallSplit(text: string, dice: Dice): string | null {
  const tree = treeOf(text)
  const walls = blocksNamed(tree, 'room')
    .filter((room) => !room.under.some(({ word }) => NAMED_BY_CORNER.includes(word)))
    .flatMap((room) => groupsOf(room).walls.map(({ wall }) => ({ room, wall })))
    .filter(({ wall, room }) => isPlain(wall) && !isUsed(tree, wall, room))
  if (walls.length === 0) return null
  const { wall, room } = dice.pick(walls)
  const whole = lengthOf(wall)!
  const first = Math.floor((whole * dice.between(2, 8)) / 10 / 1_000_000) * 1_000_000
  const name = labelOf(wall, room) ?? wall.word
  const second = `  ${wall.word} ${inMillimetres(whole - first)}, called other half`
  return edited(text, [
    {
      span: wall.line.span,
      text: `  ${wall.word} ${inMillimetres(first)}, called ${name === wall.word ? 'one half' : name}\n${second}`,
    },
  ])
}

/** Lines that name a corner by the walls that meet there. */
const NAMED_BY_CORNER = ['diagonal', 'square', 'tie', 'across', 'corner']

/** A wall with nothing on it and nothing said of it but its length and its name. */
function isPlain(wall: Entry): boolean {
  const forms = wall.phrases.map(({ form }) => form)
  return (
    wall.under.length === 0 &&
    wall.word !== 'slant' &&
    forms.every((form) => form === 'LENGTH' || form === 'called NAME')
  )
}

function isUsed({ text }: Tree, wall: Entry, room: Block): boolean {
  const label = labelOf(wall, room)
  const others = text.replace(text.slice(wall.line.span.start, wall.line.span.end), '')
  return (
    label === null ||
    new RegExp(`\\b(from|along|in|to|edge) +"?${label.replace(/"/g, '')}`, 'i').test(others)
  )
}
