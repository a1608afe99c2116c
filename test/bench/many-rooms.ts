/** A job of a whole street: many small houses, each a floor of two to four rooms round a hall. */
export interface ManyRooms {
  readonly files: ReadonlyMap<string, string>
  readonly root: string
}

const PRODUCTS = 24

/** A job whose root has about so many lines; the products stand in a file that it includes. */
export function manyRooms(lines: number): ManyRooms {
  const houses: string[] = []
  let count = HEAD.length
  for (let house = 0; count < lines; house++) {
    const text = houseText(house)
    houses.push(...text)
    count += text.length
  }
  const root = [...HEAD, ...houses].join('\n')
  return {
    files: new Map([
      ['street.floor', root],
      ['products.floor', products()],
    ]),
    root: 'street.floor',
  }
}

const HEAD = [
  'floorscribe 1',
  'job Mill Street',
  'units feet-inches, bare inches',
  'tape 1/16" + 1/32" per 10\'',
  'walls 4 1/2" thick',
  'base 1/2" thick, kept',
  'include products.floor',
  '',
]

function products(): string {
  return Array.from({ length: PRODUCTS }, (_, i) =>
    [
      `product board ${i + 1}`,
      `  plank       ${5 + (i % 4)}" x 47 7/8", 3/16" thick`,
      `  box         ${8 + (i % 5)} planks`,
      '  joints      8" stagger, 10" shortest end, 2" narrowest rip',
      '  gap         1/4"',
      '',
    ].join('\n'),
  ).join('\n')
}

/** A hall along the south of one to three rooms, each behind its own door. */
function houseText(house: number): string[] {
  const rooms = 1 + (house % 3)
  const widths = Array.from({ length: rooms }, (_, i) => 9 + ((house * 7 + i * 3) % 5))
  const whole = widths.reduce((sum, width) => sum + width, 0)
  const doors = widths.map(
    (_, i) => `    door      32", ${doorAt(widths, i)}, to room ${house}.${i + 1}`,
  )
  const all = ['hall', ...widths.map((_, _i) => `room`)].map((word, i) =>
    i === 0 ? `hall ${house}` : `${word} ${house}.${i}`,
  )
  return [
    `room hall ${house}`,
    '  existing    carpet, pad, tack strip',
    `  north       ${whole}' ${4.5 * (rooms - 1)}"`,
    ...doors,
    '  east        4\' 0"',
    `  south       ${whole}' ${4.5 * (rooms - 1)}"`,
    '    door      36", 1\' 0" from left, to outside',
    '  west        4\' 0"',
    '',
    ...widths.flatMap((width, i) => [
      `room ${all[i + 1]}`,
      `  north       ${width}' 0"`,
      '    note      window over the radiator',
      `  east        ${10 + (house % 4)}' 0 1/8"`,
      `  south       ${width}' 0"`,
      `    door      32", 2' 0" from right, to hall ${house}`,
      `  west        ${10 + (house % 4)}' 0"`,
      ...(house % 5 === 0
        ? [`  vent        4" east-west, 10" north-south, 2' 0" from west, 6" from south`]
        : []),
      '',
    ]),
    `floor house ${house}`,
    `  rooms       ${all.join(', ')}`,
    `  lay         board ${(house % PRODUCTS) + 1}, running ${house % 2 === 0 ? 'east-west' : 'north-south'}`,
    `  start       along north of hall ${house}`,
    '',
  ]
}

/** From the left end of the hall's north wall: two feet into each room. */
function doorAt(widths: readonly number[], index: number): string {
  const before = widths.slice(0, index).reduce((sum, width) => sum + width, 0)
  return `${before + 2}' ${4.5 * index}" from left`
}
