/** A job that can be made as large as wished: it takes a number of walls and has as many, or nearly. */
export interface Shape {
  readonly name: string
  readonly text: (walls: number) => string
}

/** One room as a comb, a spiral, a staircase, a star; many rooms; much in a room; many floors. */
export const SHAPES: readonly Shape[] = [
  { name: 'comb', text: comb },
  { name: 'spiral', text: spiral },
  { name: 'staircase', text: staircase },
  { name: 'star', text: star },
  { name: 'row of rooms with closets', text: row },
  { name: 'grid of rooms', text: grid },
  { name: 'rooms along a hall', text: hall },
  { name: 'hall full of columns and doors', text: furnished },
  { name: 'many floors', text: flats },
]

/** All lengths here in sixty-fourths of an inch, the finest that a tape reads. */
const INCH = 64
const FOOT = 12 * INCH

/** x to the east, y to the north. */
type Corner = readonly [number, number]

/** A tooth for every four walls. */
function comb(walls: number): string {
  const teeth = Math.floor(walls / 4) - 1
  const along = (foot: number): Corner[] => [
    [foot * FOOT, 0],
    [(foot + 1) * FOOT, 0],
    [(foot + 1) * FOOT, -3 * FOOT],
    [(foot + 2) * FOOT, -3 * FOOT],
  ]
  const tops = Array.from({ length: teeth }, (_, i) => along(2 * i))
  const end = 2 * teeth * FOOT
  return oneRoom([
    ...tops.flat(),
    [end, 0],
    [end + FOOT, 0],
    [end + FOOT, -5 * FOOT],
    [0, -5 * FOOT],
  ])
}

/** A corridor wound into itself, on ever the same ground: the more walls, the narrower. */
function spiral(walls: number): string {
  const turns = Math.floor((walls - 2) / 8)
  const side = 4 * turns
  const pitch = Math.max(1, Math.floor((40 * FOOT) / side))
  const outer: Corner[] = [[0, 0]]
  const inner: Corner[] = [[0, -1]]
  for (let t = 0; t < turns; t++) {
    const [low, high] = [2 * t, side - 2 * t]
    outer.push([high, -low], [high, -high], [low, -high], [low, -low - 2])
    inner.push([high - 1, -low - 1], [high - 1, 1 - high], [low + 1, 1 - high])
    inner.push([low + 1, t + 1 < turns ? -low - 3 : -low - 2])
  }
  return oneRoom([...outer, ...inner.toReversed()].map(([x, y]) => [x * pitch, y * pitch]))
}

/** Down one flight and back up another beside it. */
function staircase(walls: number): string {
  const steps = Math.floor((walls - 2) / 4)
  const flight = (x: number, y: number) =>
    Array.from({ length: steps }, (_, i): Corner[] => [
      [x + i * FOOT, y - i * FOOT],
      [x + (i + 1) * FOOT, y - i * FOOT],
    ]).flat()
  const foot = steps * FOOT
  return oneRoom([...flight(0, 0), [foot, -foot], ...flight(-4 * FOOT, -2 * FOOT).toReversed()])
}

/** Spikes with right angles round a middle: hardly a wall level or upright. */
function star(walls: number): string {
  const count = 2 * Math.floor(walls / 2)
  const radius = Math.max(30 * FOOT, 4 * count)
  const inner = radius - (2 * Math.PI * radius) / count
  return oneRoom(
    Array.from({ length: count }, (_, i): Corner => {
      const angle = (-2 * Math.PI * i) / count
      const reach = i % 2 === 0 ? radius : inner
      return [Math.round(reach * Math.cos(angle)), Math.round(reach * Math.sin(angle))]
    }),
  )
}

/** Rooms one after the other, each with a door to the next and a closet. */
function row(walls: number): string {
  const count = Math.floor(walls / 4)
  const rooms = Array.from({ length: count }, (_, i) => {
    const east = i + 1 < count ? `    door      2' 0", 1' 0" from left, to room ${i + 2}\n` : ''
    const west = i > 0 ? `    door      2' 0", 1' 0" from right, to room ${i}\n` : ''
    const closet = `    closet    2' 0", 1' 0" from left, 1' 6" deep\n`
    return rectangle(`room ${i + 1}`, [6, 5], [closet, east, '', west])
  })
  return manyRooms(rooms, count)
}

/** Rooms in rows above one another, doors between all that lie side by side. */
function grid(walls: number): string {
  const count = Math.floor(walls / 4)
  const wide = Math.floor(Math.sqrt(count))
  const deep = Math.floor(count / wide)
  const door = (there: boolean, from: string, to: number) =>
    there ? `    door      2' 0", 1' 0" from ${from}, to room ${to}\n` : ''
  const rooms = Array.from({ length: wide * deep }, (_, i) => {
    const [column, line] = [i % wide, Math.floor(i / wide)]
    return rectangle(
      `room ${i + 1}`,
      [6, 5],
      [
        door(line > 0, 'left', i + 1 - wide),
        door(column + 1 < wide, 'left', i + 2),
        door(line + 1 < deep, 'right', i + 1 + wide),
        door(column > 0, 'right', i),
      ],
    )
  })
  return manyRooms(rooms, wide * deep)
}

/** One hall with a door to each of the rooms along it. */
function hall(walls: number): string {
  const count = Math.floor(walls / 4) - 1
  const doors = Array.from(
    { length: count },
    (_, i) => `    door      2' 0", ${7 * i + 2}' 0" from left, to room ${i + 2}\n`,
  )
  const rooms = Array.from({ length: count }, (_, i) =>
    rectangle(
      `room ${i + 2}`,
      [6, 5],
      ['', '', `    door      2' 0", to room 1, 2' 0" from right\n`, ''],
    ),
  )
  const first = rectangle('room 1', [7 * count, 4], [doors.join(''), '', '', ''])
  return manyRooms([first, ...rooms], count + 1)
}

/** For every sixteen walls one hall has a column, a vent, an alcove and a door. */
function furnished(walls: number): string {
  const count = Math.floor(walls / 16)
  const each = (line: (foot: number) => string) =>
    Array.from({ length: count }, (_, i) => line(10 * i)).join('')
  const onNorth = each(
    (foot) =>
      `    alcove    2' 0", ${foot + 1}' 0" from left, 1' 6" deep\n` +
      `    door      2' 6", ${foot + 5}' 0" from left, to outside\n`,
  )
  const within = each(
    (foot) =>
      `  column      8" x 8", ${foot + 2}' 3" from west, 3' 2" from north\n` +
      `  vent        4" x 10", ${foot + 7}' 1" from west, 6" from south\n`,
  )
  const room = rectangle('room 1', [10 * count, 12], [onNorth, '', '', ''])
  return manyRooms([room + within], 1)
}

/** Floors of two rooms, each floor with a product of its own. */
function flats(walls: number): string {
  const count = Math.floor(walls / 8)
  const flat = (i: number) => {
    const [a, b] = [2 * i + 1, 2 * i + 2]
    const into = (to: number, from: string) =>
      `    door      2' 0", 1' 0" from ${from}, to room ${to}\n`
    return [
      product(`plank ${i + 1}`, 12),
      rectangle(`room ${a}`, [6, 5], ['', into(b, 'left'), '', '']),
      rectangle(`room ${b}`, [6, 5], ['', '', '', into(a, 'right')]),
      `floor flat ${i + 1}\n  rooms       room ${a}, room ${b}\n  lay         plank ${i + 1}, running east-west\n`,
    ].join('\n')
  }
  return `${HEAD}\n${Array.from({ length: count }, (_, i) => flat(i)).join('\n')}`
}

const HEAD = `floorscribe 1\njob Large\nunits feet-inches\ntape 1/16"\nwalls 4 1/2" thick\n`

/** Wide and long, so that a floor of ten thousand walls is no larger than a floor may be. */
function product(name: string, inches: number, gap = '1/4"'): string {
  return [
    `product ${name}`,
    `  plank       ${inches}" x ${8 * inches}", 1/2" thick`,
    '  box         10 planks',
    '  joints      8" stagger, 10" shortest end, 1" narrowest rip',
    `  gap         ${gap}`,
    '',
  ].join('\n')
}

function oneRoom(corners: readonly Corner[]): string {
  const walls = corners.map((from, i) => wall(from, corners[(i + 1) % corners.length]!))
  const inches = corners.length > 20_000 ? 24 : 12
  return [
    HEAD,
    product('plank 1', inches, '0"'),
    `room room 1\n${walls.join('')}`,
    `floor all\n  rooms       room 1\n  lay         plank 1, running east-west\n`,
  ].join('\n')
}

function manyRooms(rooms: readonly string[], count: number): string {
  const names = Array.from({ length: count }, (_, i) => `room ${i + 1}`)
  const inches = count > 5000 ? 24 : 12
  return [
    HEAD,
    product('plank 1', inches),
    ...rooms,
    `floor all\n  rooms       ${names.join(', ')}\n  lay         plank 1, running east-west\n`,
  ].join('\n')
}

/** A room so many feet wide and deep, with what is on its north, east, south and west. */
function rectangle(
  name: string,
  [wide, deep]: readonly [number, number],
  [north, east, south, west]: readonly [string, string, string, string],
): string {
  const side = (word: string, feet: number) => `  ${word.padEnd(12)}${feet}' 0"\n`
  return [
    `room ${name}\n`,
    side('north', wide) + north,
    side('east', deep) + east,
    side('south', wide) + south,
    side('west', deep) + west,
  ].join('')
}

/** The line of a wall, walked with the room on the right. */
function wall([fromX, fromY]: Corner, [toX, toY]: Corner): string {
  const [east, north] = [toX - fromX, toY - fromY]
  if (north === 0) return `  ${(east > 0 ? 'north' : 'south').padEnd(12)}${tape(east)}\n`
  if (east === 0) return `  ${(north > 0 ? 'west' : 'east').padEnd(12)}${tape(north)}\n`
  const length = Math.round(Math.sqrt(east * east + north * north))
  const legs = `${tape(east)} ${east > 0 ? 'east' : 'west'}, ${tape(north)} ${north > 0 ? 'north' : 'south'}`
  return `  slant       ${tape(length)}, ${legs}\n`
}

function tape(length: number): string {
  const whole = Math.abs(length)
  const feet = Math.floor(whole / FOOT)
  const inches = Math.floor((whole % FOOT) / INCH)
  const part = whole % INCH
  return `${feet}' ${inches}${part === 0 ? '' : ` ${part}/${INCH}`}"`
}
