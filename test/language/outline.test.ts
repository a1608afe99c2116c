import { describe, expect, test } from 'vitest'
import { codes, outline, read } from './said.ts'

const room = (...lines: string[]): string => ['room a', ...lines].join('\n')

describe('which line belongs to which', () => {
  test('an opening belongs to the wall above it, however deep it stands', () => {
    const text = room(
      "  north 9'",
      '    door 30"',
      '  corner x',
      '  door 28"',
      "  east 9'",
      '   door 26"',
    )
    expect(outline(text)).toBe(`room: NAME <a>
  north: LENGTH 9'
    door: LENGTH 30"
    door: LENGTH 28"
  corner: NAME <x>
  east: LENGTH 9'
    door: LENGTH 26"`)
  })

  test('a room in a floor that lists none is its rooms line mistyped; below one it opens a room', () => {
    expect(codes('floor f\n  room a\n  lay b')).toEqual(['2 error word-unknown'])
    expect(codes('floor f\n  rooms a\n  room b')).toEqual(['3 warning indent-extra'])
  })

  test('an opening that names its wall belongs to the room', () => {
    expect(outline(room("  north 9'", '    door 30", in south'))).toBe(`room: NAME <a>
  north: LENGTH 9'
  door: LENGTH 30" | in WALL <south>`)
  })

  test('under a wall that cannot be read it waits, and never slides to the wall before', () => {
    for (const wall of [
      '  east 12.4',
      "  esat 9'",
      '  ,',
      '  "east" 9',
      "  ea\u200bst 9'",
      '  q',
    ]) {
      const text = room("  north 9'", wall, '    door 30", 1\' from left')
      const [north, broken] = read(text).blocks[0]!.under
      expect([north!.under.length, broken!.broken, broken!.under[0]!.word]).toEqual([
        0,
        true,
        'door',
      ])
    }
  })

  test('an opening that cannot be read stays under its wall', () => {
    const text = room("  north 9'", '    dor 30"', '    door 28"')
    expect(read(text).blocks[0]!.under[0]!.under.map((entry) => entry.word)).toEqual([
      'dor',
      'door',
    ])
  })

  test('again belongs to the reading straight above it', () => {
    const text = room(
      "  north 9'",
      '    door 30"',
      '    note x',
      '    again 30 1/8"',
      '  again 9\' 1"',
    )
    expect(outline(text)).toBe(`room: NAME <a>
  north: LENGTH 9'
    door: LENGTH 30"
      note: x
      again: LENGTH 30 1/8"
      again: LENGTH 9' 1"`)
    expect(codes(room("  north 9'", '  corner x', "  again 9'"))).toEqual(['4 error nothing-above'])
    expect(codes(room('  door 30"'))).toEqual(['2 error nothing-above'])
  })

  test('a remark belongs to the line above when it stands deeper, else to the block', () => {
    const text = room("  north 9'", '    note of the wall', '  note of the room')
    expect(outline(text)).toBe(`room: NAME <a>
  north: LENGTH 9'
    note: of the wall
  note: of the room`)
  })
})

describe('blocks', () => {
  test('an unreadable line in column one opens one, and its lines join no other room', () => {
    const text = "room a\n  north 9'\nrom b\n  north 8'\n  esat 7'\n  door 30\"\nroom c\n  north 6'"
    expect(outline(text)).toBe(`room: NAME <a>
  north: LENGTH 9'
rom!: b
  north: LENGTH 8'
  esat!: 7'
    door: LENGTH 30"
room: NAME <c>
  north: LENGTH 6'`)
    expect(codes(text)).toEqual(['3 error word-unknown'])
    expect(read(text).blocks[1]!.name!.key).toBe('b')
  })

  test('lines below a line of column one that holds none get one message', () => {
    expect(codes("units mm\n  north 9'\n  east 9'\n  south 9'\nroom a")).toEqual([
      '2 error line-without-block',
    ])
    expect(codes("  north 9'\n  east 9'")).toEqual(['1 error line-without-block'])
  })

  test('a line of another kind of block', () => {
    expect(codes("floor f\n  north 9'\n  rooms a")).toEqual(['2 error word-elsewhere'])
    expect(codes("units mm\neast 9'\n  south 9'")).toEqual(['2 error word-elsewhere'])
  })

  test('a lost indent is read as part of the block above, an extra one as a block', () => {
    const text = "room a\n  north 9'\neast 8'\n  room b\n  north 7'\n units mm\n"
    expect(outline(text)).toBe(`room: NAME <a>
  north: LENGTH 9'
  east: LENGTH 8'
room: NAME <b>
  north: LENGTH 7'
units: feet-inches|inches|mm|cm|m mm`)
    expect(codes(text)).toEqual([
      '3 warning indent-lost',
      '4 warning indent-extra',
      '6 warning indent-extra',
    ])
  })

  test('the order of lines does not matter to what a bare number is', () => {
    expect(codes('room a\n  north 120\nunits feet-inches, bare inches')).toEqual([])
    expect(codes('room a\n  north 3760\nunits\u00a0mm,\tbare mm  # site')).toEqual([])
    expect(codes('room a\n  north 120\nUnits bare inches, feet-inches')).toEqual([])
    expect(codes('room a\n  north 120\nunits inches')).toEqual(['2 error length-two-ways'])
  })

  test('a wall that is still to be read is unfinished, not wrong', () => {
    expect(codes(room('  north', '  east ?', '  south called x'))).toEqual([
      '2 incomplete line-unfinished',
      '4 incomplete line-unfinished',
    ])
  })
})

describe('merges left open', () => {
  const conflict = (ours: string, theirs: string): string =>
    `<<<<<<< HEAD\n${ours}||||||| base\n  old\n=======\n${theirs}>>>>>>> theirs\n`

  test('one message, and the block it stands in is not whole', () => {
    const text = `room a\n  north 9'\n${conflict("  east 9'\n", "  east 8'\n")}    door 30"\nroom b\n  north 9'\n`
    expect(codes(text)).toEqual(['3 error merge-left-open'])
    const [a, b] = read(text).blocks
    expect([a!.broken, b!.broken]).toEqual([true, false])
    expect(a!.under.map((entry) => [entry.word, entry.broken, entry.under.length])).toEqual([
      ['north', false, 0],
      ['', true, 1],
    ])
  })

  test('a whole room in it opens a block, so that what follows joins no other', () => {
    const text = `room a\n  north 9'\n${conflict("room b\n  north 8'\n", "room c\n  north 7'\n")}  east 6'\nroom d`
    expect(codes(text)).toEqual(['3 error merge-left-open'])
    expect(read(text).blocks[0]!.under.filter((entry) => !entry.broken).length).toBe(1)
  })

  test('one that is never closed ends at its last mark', () => {
    expect(codes("room a\n<<<<<<< x\n  north 9'\nroom b\n  nroth 9'\n")).toEqual([
      '2 error merge-left-open',
      '5 error word-unknown',
    ])
  })
})

describe('signs that nobody sees', () => {
  test.each([
    ["  no\u200brth 9'", 'character-hidden', 'U+200B'],
    ["  north\u202e 9'", 'character-turns-text', 'U+202E'],
    ["  north\u0000 9'", 'character-not-text', 'U+0000'],
    ['  note x\u2066y', 'character-turns-text', 'U+2066'],
    ["  north 9' # x\u202e", 'character-turns-text', 'U+202E'],
  ])('%j', (line, code, name) => {
    const text = room(line, "  east 8'")
    const [message, ...others] = read(text).messages
    expect(others).toEqual([])
    expect(message!.code).toBe(code)
    expect(message!.text).toContain(name)
  })

  test('a run of them is one message, and one fix takes them all out', () => {
    const text = room(`  ${'\u200b'.repeat(50)}nor\u200b\u200bth 9'`)
    const [message, ...others] = read(text).messages
    expect(others).toEqual([])
    expect(message!.fixes[0]!.edits.length).toBe(2)
  })

  test('names in scripts that run from right to left are no trouble', () => {
    expect(codes('room חדר שינה\n  existing سجاد')).toEqual([])
  })
})

describe('versions', () => {
  test('a later file names both versions', () => {
    const [message] = read('floorscribe 2\nroom a\n').messages
    expect(message!.code).toBe('version-later')
    expect(message!.text).toMatch(/floorscribe 2.*floorscribe 1/)
  })

  test('a file has one of the lines that all others hang on', () => {
    expect(codes('floorscribe 1\nfloorscribe 1\nunits mm\nunits cm')).toEqual([
      '2 error line-twice',
      '4 error line-twice',
    ])
  })
})
