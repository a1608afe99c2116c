import { describe, expect, test } from 'vitest'
import { WARNING_CODES } from '../../server/src/facts/codes.ts'
import { complete } from '../../server/src/features/completion.ts'
import { plainText } from '../../server/src/features/writing/insert.ts'
import { applied } from './applied.ts'
import { view } from './marked.ts'

function offered(source: Parameters<typeof view>[0], paths: readonly string[] = []) {
  const { view: seen, cursor } = view(source)
  return complete(seen, cursor, { paths })
}

function labels(source: Parameters<typeof view>[0], paths: readonly string[] = []) {
  return offered(source, paths).items.map(({ label }) => label)
}

/** The file once the offer of that label is taken, every stop left as it is. */
function taken(source: string, label: string): string {
  const { view: seen, cursor, texts } = view(source)
  const offer = complete(seen, cursor).items.find((one) => one.label === label)
  if (offer === undefined) throw new Error(`${label} is not offered`)
  const edit = { span: offer.span, text: plainText(offer.insert) }
  return applied(texts, [edit]).get(seen.file)!
}

const DEN = `room den
  north       12' 4"
  east        10' 8"
  south       12' 4 1/4"
`
const HOUSE = `job Heron Cottage
product river larch
product smoked ash
room hall
  north       12'
  east        4'
  south       12', called long wall
    door      30", 1' from right, to den
  west        4'
room den
  north       12'
  east        9'
  south       12'
  west        9'
    closet    4', 1' from left, 2' deep
`

describe('where a line begins', () => {
  test('an empty file: what a file holds', () => {
    expect(labels('‹|›').slice(0, 4)).toEqual(['floorscribe', 'job', 'units', 'tape'])
    expect(labels('‹|›')).toContain('room, four walls')
  })

  test('what a file says once is not offered again', () => {
    const words = labels('floorscribe 1\njob Heron\nunits mm\n\n‹|›')
    expect(words).not.toContain('units')
    expect(words).toContain('room')
  })

  test('inside a block only its lines', () => {
    const words = labels(`${HOUSE}  ‹|›`)
    expect(words).toContain('door')
    expect(words).not.toContain('plank')
    expect(words).not.toContain('product')
  })

  test('below a block in column one both, the next line of the block first', () => {
    const words = labels(`${DEN}‹|›`)
    expect(words[0]).toBe('west')
    expect(words).toContain('product')
    expect(taken(`${DEN}‹|›`, 'west')).toBe(`${DEN}  west        ?`)
  })

  test.each([
    ['after nothing', 'room den\n  ‹|›', ['north']],
    ['after north', "room den\n  north 12'\n  ‹|›", ['east', 'north-east']],
    ['after east', "room den\n  north 12'\n  east 9'\n  ‹|›", ['south', 'south-east']],
    ['after a bay', "room den\n  north 12'\n  north-east 9'\n  ‹|›", ['south-east', 'east']],
  ])('the next wall %s', (_, source, first) => {
    expect(labels(source).slice(0, first.length)).toEqual(first)
    expect(offered(source).items.filter(({ likely }) => likely)).toHaveLength(1)
  })

  test('the closing wall says what it should come to, and puts in a reading to be taken', () => {
    const west = offered(`${DEN}  ‹|›`).items[0]!
    expect(west.detail).toBe(
      'It closes the room, and from the other walls should come to about 10\' 8": read it all the same.',
    )
    expect(plainText(west.insert)).toBe('west        ?')
  })

  test('a wall between others closes nothing', () => {
    const [first] = offered("room den\n  north 12'\n  east 9'\n  south 12'\n  ‹|›\n  west 9'").items
    expect(first?.detail).toBe('The wall that you see looking west.')
  })

  test('no wall is the next one once they have come round', () => {
    const { items } = offered(`${DEN}  west        10' 8"\n  ‹|›`)
    expect(items.some(({ likely }) => likely)).toBe(false)
  })

  test('an opening needs a wall above it, and a second reading a reading', () => {
    expect(labels('room den\n  ‹|›')).not.toContain('door')
    expect(labels('room den\n  ‹|›')).not.toContain('again')
    const below = labels("room den\n  north 12'\n    ‹|›")
    expect(below).toContain('door')
    expect(below).toContain('again')
  })

  test('a remark between changes nothing of that', () => {
    const below = labels("room den\n  north 12'\n  note dog in the yard\n    ‹|›")
    expect(below).toContain('door')
    expect(below).toContain('again')
    expect(labels("room den\n    ‹|›\n  north 12'")).not.toContain('door')
  })

  test('what a block says once is not offered again', () => {
    expect(labels('product larch\n  gap 1/4"\n  ‹|›')).not.toContain('gap')
    expect(labels('product larch\n  note one\n  ‹|›')).toContain('note')
  })

  test('a word being typed is replaced whole, in the canonical column', () => {
    expect(taken("room den\n  north 12'\n    do‹|›", 'door')).toBe(
      "room den\n  north 12'\n    door      ?, ? from left, to outside",
    )
    expect(taken('room den\n  no‹|›o', 'north')).toBe('room den\n  north       ?')
  })

  test('a word with a line behind it is replaced alone', () => {
    expect(taken("room den\n  nor‹|› 12'", 'north')).toBe("room den\n  north 12'")
  })
})

describe('what a line goes on with', () => {
  test('a wall: its reading first, then what else it takes', () => {
    const found = labels('room den\n  north ‹|›')
    expect(found.slice(0, 2)).toEqual(['?', 'called name'])
    expect(found).toContain('stair up')
    expect(found).toContain('tub')
  })

  test('what stands on the line is not offered again', () => {
    const found = labels("room den\n  north 12', called bay, ‹|›")
    expect(found).not.toContain('?')
    expect(found).not.toContain('called name')
    expect(found).toContain('… gap')
  })

  test('after a figure: its roles, with the walls that meet this one', () => {
    const found = labels(HOUSE.replace("1' from right", "1' ‹|›"))
    expect(found.slice(0, 2)).toEqual(['and … from left or right', 'from left'])
    expect(found).toContain('from west')
    expect(found).toContain('from east')
    expect(found).toContain('thick')
    expect(found).not.toContain('from long wall')
  })

  test('a word begun: only what begins so', () => {
    expect(labels("room den\n  north 12', st‹|›")).toEqual(['stair up', 'stair down'])
    expect(labels("room den\n  north 12', base off ‹|›")).toEqual(['base off and back'])
    expect(taken("room den\n  north 12', base o‹|›", 'base off and back')).toBe(
      "room den\n  north 12', base off and back",
    )
  })

  test('rooms of this job for `to`: the one from which an opening leads here first', () => {
    const found = labels(`${HOUSE}    door 30", 1' from right, ‹|›`)
    expect(found.filter((label) => label.startsWith('to '))).toEqual(['to hall', 'to outside'])
    expect(labels(`${HOUSE}    door 30", to h‹|›`)).toEqual(['hall', 'outside'])
  })

  test('of many rooms those that hold what is typed, and it is told that there are more', () => {
    const rooms = Array.from({ length: 300 }, (_, i) => `room r${i}`).join('\n')
    const all = offered(`${rooms}\nroom den\n  north 12'\n    door 30", to ‹|›`)
    expect([all.items.length, all.whole]).toEqual([200, false])
    const some = offered(`${rooms}\nroom den\n  north 12'\n    door 30", to r29‹|›`)
    expect(some.items.map(({ label }) => label)).toEqual([
      'r29',
      'r129',
      'r209',
      'r219',
      'r229',
      'r239',
      'r249',
      'r259',
      'r269',
      'r279',
      'r289',
      ...Array.from({ length: 10 }, (_, i) => `r29${i}`),
    ])
  })

  test('a name that would not be read as one comes in quotes', () => {
    const source = 'room "hall of mirrors"\nroom den\n  north 12\'\n    door 30", to ‹|›'
    expect(taken(source, 'hall of mirrors')).toContain('to "hall of mirrors"')
    const open = 'room "hall of mirrors"\nroom den\n  north 12\'\n    door 30", to "hall‹|›'
    expect(taken(open, 'hall of mirrors')).toMatch(/to "hall of mirrors"$/)
  })

  test('rooms and closets that no floor lists yet', () => {
    expect(labels(`${HOUSE}floor up\n  rooms ‹|›`)).toEqual(['hall', 'den', 'den closet'])
    expect(labels(`${HOUSE}floor up\n  rooms hall, ‹|›`)).toEqual(['den', 'den closet'])
  })

  test('products for `lay`, and its ways', () => {
    expect(labels(`${HOUSE}floor up\n  lay ‹|›`).slice(0, 2)).toEqual(['river larch', 'smoked ash'])
    expect(labels(`${HOUSE}floor up\n  lay river larch, ‹|›`).slice(0, 4)).toEqual([
      'running east-west',
      'running north-south',
      'running north-east',
      'running north-west',
    ])
  })

  test('walls of the rooms of this floor', () => {
    expect(labels(`${HOUSE}floor up\n  rooms hall\n  start ‹|›`)).toEqual([
      'along north of hall',
      'along east of hall',
      'along long wall of hall',
      'along west of hall',
    ])
    expect(labels(`${HOUSE}floor up\n  rooms hall, den\n  start along long wall of ‹|›`)).toEqual([
      'hall',
      'den',
    ])
  })

  test('doorways at the rim of a floor first for an edge', () => {
    expect(labels(`${HOUSE}floor up\n  rooms hall\n  edge hall to ‹|›`)).toEqual(['den', 'hall'])
  })

  test('corners of the room for a diagonal', () => {
    const found = labels(`${HOUSE}  diagonal 15', ‹|›`)
    expect(found.slice(0, 4)).toEqual([
      'from north-west',
      'from north-east',
      'from south-east',
      'from south-west',
    ])
    expect(taken(`${HOUSE}  diagonal 15', ‹|›`, 'from north-east')).toMatch(
      /, from north-east to south-west$/,
    )
    expect(labels(`${HOUSE}  diagonal 15', from north-west to ‹|›`)).toEqual([
      'north-west',
      'north-east',
      'south-east',
      'south-west',
    ])
  })

  test('walls of the room for a thing in it', () => {
    expect(labels(`${HOUSE}  column 8" round, 3' from ‹|›`)).toEqual([
      'north',
      'east',
      'south',
      'west',
    ])
  })

  test('rooms that openings lead to and that have no block yet', () => {
    expect(labels('room den\n  north 12\'\n    door 30", to bath\nroom ‹|›')).toEqual(['bath'])
  })

  test('the unit marks of a bare figure', () => {
    expect(labels('room den\n  north 12‹|›')).toEqual(["12'", '12"', '12 m', '12 mm'])
    expect(labels("room den\n  north 12' 4‹|›")).toEqual(['12\' 4"'])
    expect(labels('units mm\nroom den\n  north 3760‹|›')).toEqual(['3760 mm', '3760 cm', '3760 m'])
    expect(taken("room den\n  north about 12' 4‹|›", '12\' 4"')).toBe(
      'room den\n  north about 12\' 4"',
    )
    expect(labels("room den\n  north 12'‹|›")).toEqual([])
  })

  test('the closing reading is told beside it, never put in', () => {
    const [first] = offered(`${DEN}  west ‹|›`).items
    expect(first?.detail).toBe('To be read. From the other walls it should come to about 10\' 8".')
    expect(plainText(first!.insert)).toBe('?')
  })

  describe('accept', () => {
    const job = (den: string, hall: string) => `tape 1/16" + 1/32" per 10'
room den
  north       12' 4"
  east        10'
  south       12' 4 1/2"
  west        10'
${den}room hall
${hall}`

    test('the warnings that stand in its block, as they were said before the line was begun', () => {
      const { messages } = view(job('', '')).view.measured
      const { view: seen, cursor } = view(job('  accept ‹|›\n', ''))
      const { items } = complete(seen, cursor, { said: messages })
      expect(items.map(({ label }) => label)).toEqual(['closing error', 'because name'])
      expect(items[0]!.detail).toMatch(/^den misses closing by 1\/2"/)
    })

    test('where none stands every warning may be named', () => {
      const { messages } = view(job('', '')).view.measured
      const { view: seen, cursor } = view(job('', '  accept ‹|›\n'))
      const { items } = complete(seen, cursor, { said: messages })
      expect(items.map(({ label }) => label)).toEqual([
        ...WARNING_CODES.map((code) => code.replaceAll('-', ' ')),
        'because name',
      ])
    })
  })

  test('paths for an include, as the caller knows them', () => {
    expect(labels('include pro‹|›', ['products.floor', 'prices/spring.floor'])).toEqual([
      'products.floor',
      'prices/spring.floor',
    ])
  })

  test.each(['room den\n  note any ‹|›', 'room den  # to ‹|›', '# nor‹|›', 'job My ‹|›'])(
    'nothing in plain text: %j',
    (source) => {
      expect(labels(source)).toEqual([])
    },
  )
})
