import { message } from '../facts/message.ts'
import type { Block, Entry, Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { House } from './doorways.ts'
import { expectationsOf } from './expectations.ts'
import { onlyOne } from './file-lines.ts'
import { breakOf, edgeOf, type FloorScope, wallOfFloor } from './floor-edges.ts'
import { type LaidIn, type Layable, roomsListed } from './floor-rooms.ts'
import type { Floor, Running, Way } from './job.ts'
import { type Named, nearestName, unknownName } from './names.ts'
import { lengthIn, nameOf, phrase } from './phrases.ts'
import type { RoomsKnown } from './rooms-known.ts'

/** The rest of the job, for what the lines of its floors refer to. */
export interface FloorsAround {
  readonly known: RoomsKnown
  readonly house: House
  readonly layable: Layable
  readonly laidIn: LaidIn
  /** Products by key: declared ones, whether or not they are complete. */
  readonly products: ReadonlyMap<string, Named>
}

/** Reads a floor block: its rooms, what is laid in them and how, and what its rim meets. */
export function floorOf(block: Block, name: Name, around: FloorsAround, binding: Binding): Floor {
  const lines = (word: string): readonly Entry[] =>
    block.under.filter((entry) => entry.word === word && !entry.broken)
  const listed = lines('rooms').flatMap((line) => line.phrases.flatMap(({ names }) => names))
  const { rooms, whole } = roomsListed(name, listed, around, binding)
  const inside = new Set(rooms.map(({ key }) => key))
  const isWhole = whole && rooms.length > 0 && !block.under.some((entry) => entry.broken)
  const scope: FloorScope = { ...around, floor: name, inside, whole: isWhole }
  const lay = onlyOne(lines('lay'), binding)
  sayMissing(block, name, { rooms: listed, lay }, binding)
  return {
    name,
    rooms,
    product: lay === null ? null : productOf(lay, around, binding),
    running: lay === null ? null : runningOf(lay, scope, binding),
    start: startOf(onlyOne(lines('start'), binding), scope, binding),
    shift: shiftOf(onlyOne(lines('shift'), binding)),
    breaks: lines('break').flatMap((line) => breakOf(line, scope, binding) ?? []),
    edges: lines('edge').flatMap((line) => edgeOf(line, scope, binding) ?? []),
    expects: lines('expect').flatMap((line) => expectationsOf(line)),
    span: block.line.span,
    broken: !whole || block.under.some(binding.isWrong),
  }
}

function sayMissing(
  block: Block,
  name: Name,
  has: { readonly rooms: readonly Name[]; readonly lay: Entry | null },
  binding: Binding,
): void {
  const missing = [
    ...(has.rooms.length > 0
      ? []
      : [['rooms', 'in which rooms it lies (rooms hall, den)'] as const]),
    ...(has.lay !== null ? [] : [['lay', 'what is laid (lay, then a product)'] as const]),
  ].filter(([word]) => !block.under.some((entry) => entry.word === word))
  const isDamaged = block.broken || block.under.some(binding.isWrong)
  if (missing.length === 0 || isDamaged) return
  const text = `Floor ${name.text} does not say yet ${missing.map(([, what]) => what).join(' and ')}.`
  binding.say(message('incomplete', 'floor-unfinished', block.line.span, text))
}

function productOf(lay: Entry, around: FloorsAround, binding: Binding): Name | null {
  const name = nameOf(lay, 'PRODUCT')
  if (name === null || around.products.has(name.key)) return name
  const { known, products } = around
  if (!known.isLost(name.key) && !isElsewhere(name, products, binding)) {
    const help = `A block "product ${name.text}" tells what it is, here or in an included file.`
    binding.sayOnce(`product ${name.key}`, name.span, () =>
      unknownName({ kind: 'product', name, known: products.values(), help }, binding),
    )
  }
  return null
}

/** No product is near by name, and what may have it could not be read, which is said. */
function isElsewhere(name: Name, products: FloorsAround['products'], binding: Binding): boolean {
  return binding.mayBeUnread('product') && nearestName(name, products.values(), binding) === null
}

const RUNNING = 'running east-west|north-south|north-east|north-west'

function runningOf(lay: Entry, scope: FloorScope, binding: Binding): Running | null {
  const ways = phrase(lay, RUNNING)
  if (ways !== null) {
    const way = ways.choices[0] as Extract<Running, { kind: 'ways' }>['ways']
    return { kind: 'ways', ways: way, span: ways.span }
  }
  const along = phrase(lay, 'running along WALL of ROOM')
  const [wall, room] = along?.names ?? []
  if (along === null || wall === undefined || room === undefined) return null
  const found = wallOfFloor(scope, wall, room, binding)
  return found === null ? null : { kind: 'along', ...found, span: along.span }
}

function startOf(line: Entry | null, scope: FloorScope, binding: Binding): Floor['start'] {
  const [wall, room] = (line && phrase(line, 'along WALL of ROOM')?.names) ?? []
  if (line === null || wall === undefined || room === undefined) return null
  const found = wallOfFloor(scope, wall, room, binding)
  return found === null ? null : { ...found, span: line.line.span }
}

function shiftOf(line: Entry | null): Floor['shift'] {
  const moved = line === null ? null : phrase(line, 'LENGTH WAY')
  const distance = lengthIn(moved?.measures[0])
  if (line === null || moved === null || distance === null) return null
  return { distance, way: moved.choices[0] as Way, span: line.line.span }
}
