import type { Tree } from '../../language/tree.ts'
import { tapeOptionsIn } from '../../language/units-line.ts'
import { type BareUnit, readLength, type TapeOptions } from '../../units/tape.ts'
import type { Edit } from '../view.ts'
import { unitMarks } from '../writing/length-marks.ts'
import { endingOf } from './ending.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/** The readings that a refused length may be, and where it lacks its unit what a file may say of all. */
export function lengthRepairs(asked: Asked): readonly Repair[] {
  const { view, place } = asked
  const text = view.tree.text.slice(place.start, place.end)
  const options = tapeOptionsIn(view.tree)
  const { refusal } = readLength(text, options)
  if (refusal?.code !== asked.message.code) return []
  const isRead = (length: string): boolean => readLength(length, options).refusal === null
  const marked = unitMarks(text, options).map((length) => length.text)
  const readings = [...new Set([...refusal.readings, ...marked])].filter(isRead)
  const choices = readings
    .filter((length) => length !== refusal.fix)
    .map((length) => repair(asked, 'choice', `Write ${length}`, [{ span: place, text: length }]))
  return [...choices, ...unitsRepair(asked, text, options)]
}

/** A number without a unit, and no line that says what such numbers are. */
function unitsRepair(asked: Asked, text: string, options: TapeOptions): readonly Repair[] {
  if (options.bare !== null) return []
  const bare: BareUnit = options.style === 'feet-inches' ? 'inches' : options.style
  if (readLength(text, { ...options, bare }).refusal !== null) return []
  const edit = unitsLine(asked.view.tree, bare, options)
  const title = `Say for this file: bare numbers are ${bare}`
  return edit === null ? [] : [repair(asked, 'choice', title, [edit])]
}

/** On the units line that there is, else on one of its own at the top. */
function unitsLine(tree: Tree, bare: BareUnit, { style }: TapeOptions): Edit | null {
  const units = tree.blocks.find(({ word }) => word === 'units')
  const last = units?.phrases.at(-1)
  if (units !== undefined) {
    if (units.broken || last === undefined) return null
    const { file, end } = last.span
    return { span: { file, start: end, end }, text: `, bare ${bare}` }
  }
  const version = tree.blocks.find(({ word }) => word === 'floorscribe')
  const line = `units ${style}, bare ${bare}`
  const start = tree.text.startsWith('\ufeff') ? 1 : 0
  if (version === undefined)
    return { span: { file: tree.file, start, end: start }, text: `${line}${endingOf(tree)}` }
  const { end } = version.line.span
  return { span: { file: tree.file, start: end, end }, text: `${endingOf(tree)}${line}` }
}
