import { describe, expect, test } from 'vitest'
import type { Message } from '../../server/src/facts/message.ts'
import { type Repair, repairs } from '../../server/src/features/repairs.ts'
import { applied } from './applied.ts'
import { ROOT, view } from './marked.ts'

type Sources = Parameters<typeof view>[0]

interface Looked {
  readonly found: readonly Repair[]
  readonly messages: readonly Message[]
  readonly texts: ReadonlyMap<string, string>
  readonly file: string
}

function look(sources: Sources): Looked {
  const { view: seen, cursor, texts } = view(sources)
  const found = repairs(seen, { start: cursor, end: cursor })
  return { found, messages: seen.counted!.messages, texts, file: seen.file }
}

/** The text once one repair is made, after making sure that it settles its message and brings no error. */
function mended(sources: Sources, title: string): string {
  const { found, messages, texts, file } = look(sources)
  const repair = found.find((one) => one.title === title)
  if (repair === undefined) throw new Error(`offered: ${found.map((one) => one.title).join('; ')}`)
  const after = applied(texts, repair.edits)
  const said = view(Object.fromEntries(after)).view.counted!.messages
  const count = (list: readonly Message[], code: string) =>
    list.filter((one) => one.code === code && !one.accepted).length
  const { code } = repair.message
  expect(count(said, code), code).toBeLessThan(count(messages, code))
  for (const one of said.filter(({ weight }) => weight === 'error')) {
    expect(count(said, one.code), one.text).toBeLessThanOrEqual(count(messages, one.code))
  }
  return after.get(file)!
}

function titles(sources: Sources): readonly string[] {
  return look(sources).found.map(({ title, kind }) => `${kind}: ${title}`)
}

const DEN = (north: string) => `tape 1/16" + 1/32" per 10'
room den
  north       ${north}
  east        10' 8 1/4"
  south       12' 4 1/8"
  west        10' 8 1/8"
`

describe('a unit is missing: the readings that it may be', () => {
  test.each([
    ['12‹|› 4', ['choice: Write 12\' 4"']],
    ["12'‹|› 4", ['sure: Write 12\' 4"', 'choice: Say for this file: bare numbers are inches']],
    [
      '148‹|› 1/2',
      ['choice: Write 148 1/2"', 'choice: Say for this file: bare numbers are inches'],
    ],
    [
      '12‹|›.4',
      [
        'choice: Write 12\' 4"',
        "choice: Write 12.4'",
        'choice: Write 12.4"',
        'choice: Write 12.4 m',
        'choice: Write 12.4 mm',
        'choice: Say for this file: bare numbers are inches',
      ],
    ],
    ['5\'‹|› 14"', ['choice: Write 6\' 2"', 'choice: Write 5\' 4"', 'choice: Write 5\' 1/4"']],
    ['4"‹|› 10\'', ['choice: Write 4\' 10"', 'choice: Write 10\' 4"']],
    ['1,234 ‹|›m', ['choice: Write 1234 m', 'choice: Write 1.234 m']],
    ['12,4‹|› m', ['sure: Write 12.4 m']],
  ])('%s', (north, offered) => {
    expect(titles(DEN(north))).toEqual(offered)
  })

  test('each of them settles it', () => {
    expect(mended(DEN('148 1/2‹|›'), 'Write 148 1/2"')).toBe(DEN('148 1/2"'))
    expect(mended(DEN('148 1/2‹|›'), 'Say for this file: bare numbers are inches')).toBe(
      `units feet-inches, bare inches\n${DEN('148 1/2')}`,
    )
  })

  test('the units line that there is says it, for all of the file', () => {
    const source =
      'floorscribe 1\nunits mm\nroom den\n  north 3760‹|›\n  east 3000\n  south 3760\n  west 3000\n'
    expect(mended(source, 'Say for this file: bare numbers are mm')).toContain(
      'units mm, bare mm\n',
    )
    const without = source.replace('units mm\n', '')
    expect(mended(without, 'Say for this file: bare numbers are inches')).toMatch(
      /^floorscribe 1\nunits feet-inches, bare inches\nroom/,
    )
  })

  test('also where the same is only said in passing', () => {
    const source = 'room den\n  north 120\n  east 90\n  south 120\n  west 90‹|›\n'
    const { found, texts } = look(source)
    const inches = found.find(({ title }) => title === 'Write 90"')!
    expect(applied(texts, inches.edits).get(ROOT)).toContain('  west 90"\n')
  })
})

describe('near names and words', () => {
  test.each([
    ['a word of a line', "room den\n  nroth‹|› 12'\n", 'Write north', "  north 12'"],
    ['a word of the file', 'rom‹|› den\n', 'Write room', 'room den'],
    ['a word of a phrase', "room den\n  north 12', calld‹|› bay\n", 'Write called', 'called bay'],
    [
      'a room',
      "room hall\nroom den\n  north 12'\n    door 30\", 1' from left, to hal‹|›\n",
      'Write hall',
      'to hall',
    ],
    [
      'a warning',
      'room den\n  accept closing eror‹|›\n',
      'Write closing error',
      'accept closing error',
    ],
    ['a product', 'product larch\nfloor up\n  lay lach‹|›\n', 'Write larch', 'lay larch'],
  ])('%s', (_, source, title, written) => {
    expect(mended(source, title)).toContain(written)
  })

  test('a room at each of its places, not where the near one is told', () => {
    const source = (one: string, two: string, told: string) =>
      `room hall${told}\nroom den\n  north 12'\n    door 30", 1' from left, to hal${one}\n    door 30", 5' from left, to hal${two}\n`
    expect(titles(source('', '‹|›', ''))).toEqual([
      'sure: Write hall',
      'choice: Add the line: room hal',
    ])
    const { found, texts } = look(source('', '‹|›', ''))
    expect(applied(texts, found[0]!.edits).get(ROOT)).toBe(
      source('', '', '').replace("5' from left, to hal", "5' from left, to hall"),
    )
    expect(titles(source('', '', '‹|›'))).toEqual([])
  })

  test('several rooms that there are not: each its own', () => {
    const source =
      "room hall\nroom bath\nroom den\n  north 12'\n    door 30\", 1' from left, to hal\n    door 30\", 5' from left, to bth‹|›\n"
    expect(titles(source)).toEqual(['sure: Write bath', 'choice: Add the line: room bth'])
  })

  test('a room that is not measured yet', () => {
    const source = 'room den\n  north 12\'\n    door 30", 1\' from left, to "hall of mirrors"‹|›\n'
    expect(mended(source, 'Add the line: room "hall of mirrors"')).toMatch(
      /\n\nroom "hall of mirrors"\n$/,
    )
  })
})

describe('marks that look alike', () => {
  test.each([
    ['a foot mark of another kind', DEN('12´ 4"‹|›'), 'Write 12\' 4"', DEN('12\' 4"')],
    ['an inch mark of another kind', DEN("12' 4¨‹|›"), 'Write 12\' 4"', DEN('12\' 4"')],
    ['two foot marks', DEN("12' 4'‹|›"), 'Write 12\' 4"', DEN('12\' 4"')],
    ['a sign of no width', DEN('12\'\u200b‹|› 4"'), 'Take the hidden signs out', DEN('12\' 4"')],
    ['digits of full width', DEN('１２‹|›\' 4"'), 'Write 12\' 4"', DEN('12\' 4"')],
    [
      'a comma of full width',
      DEN('12\' 4"，called‹|› bay'),
      'Write 12\' 4",called bay',
      DEN('12\' 4",called bay'),
    ],
    ['a question mark of full width', DEN('？‹|›'), 'Write ?', DEN('?')],
    [
      'letters of full width',
      DEN('12\' 4"').replace('north', 'ｎｏｒｔｈ‹|›'),
      'Write north',
      DEN('12\' 4"'),
    ],
    ['a letter for a digit', DEN('l2‹|›\' 4"'), "Write 12'", DEN('12\' 4"')],
    ['a lost comma', DEN('12\' 4" called‹|› bay'), 'Put the comma', DEN('12\' 4", called bay')],
    ['a comma too many', DEN('12\' 4",‹|›'), 'Leave the comma out', DEN('12\' 4"')],
  ])('%s', (_, source, title, written) => {
    expect(mended(source, title)).toBe(written)
  })
})

describe('lines in the wrong column', () => {
  test('a wall in column one', () => {
    expect(mended("room den\nnorth‹|› 12'\n", 'Indent the line')).toBe("room den\n  north 12'\n")
  })

  test('a room that is indented', () => {
    const source = "room den\n  north 12'\n  room‹|› hall\n"
    expect(mended(source, 'Take the indent out')).toBe("room den\n  north 12'\nroom hall\n")
  })
})

describe('an opening that ends past its wall', () => {
  const door = (text: string) =>
    DEN('12\' 4"').replace('  east', `    door      ${text}, to outside\n  east`)

  test('is moved so that it ends with the wall', () => {
    expect(titles(door('30", 10\' 2"‹|› from left'))).toEqual([
      'sure: Write 1\' 2"',
      'choice: Move the door onto its wall: 9\' 10" from left',
    ])
    expect(
      mended(door('30", 10\' 2"‹|› from left'), 'Move the door onto its wall: 9\' 10" from left'),
    ).toBe(door('30", 9\' 10" from left'))
  })

  test('from the right too, and down to what a tape shows', () => {
    expect(
      mended(
        door('30.3", 10\' 9"‹|› from right'),
        'Move the door onto its wall: 9\' 9 11/16" from right',
      ),
    ).toBe(door('30.3", 9\' 9 11/16" from right'))
  })

  test('with both jambs off one hook', () => {
    expect(
      mended(door("10'‹|› and 12' 9\" from left"), 'Move the door onto its wall: 9\' 7" from left'),
    ).toBe(door('9\' 7" and 12\' 4" from left'))
  })

  test('doubts beside the reading stay', () => {
    expect(
      mended(
        door('30", about 10\' 9"?‹|› from left'),
        'Move the door onto its wall: 9\' 10" from left',
      ),
    ).toBe(door('30", about 9\' 10"? from left'))
  })

  test('with the wrong mark: inches first, a digit less after', () => {
    const wide = door("30', 1' 2\"‹|› from left")
    expect(titles(wide)).toEqual(['sure: Write 30"', "sure: Write 3'"])
    expect(mended(wide, 'Write 30"')).toBe(door('30", 1\' 2" from left'))
  })

  test('is not moved where it is wider than the wall', () => {
    expect(titles(door("13'‹|›, 1' from left")).filter((title) => title.includes('Move'))).toEqual(
      [],
    )
  })
})

test('walls the wrong way round: the list is turned, and what is read facing a wall stays', () => {
  const source = `room den
  north       12'‹|›
    door      30", 1' from left, to outside
  west        9'
    note      the long one
  south       12'
  east        9'
    closet    4', 1' from right, 2' deep
`
  expect(mended(source, 'List the walls left to right')).toBe(`room den
  north       12'
    door      30", 1' from left, to outside
  east        9'
    closet    4', 1' from right, 2' deep
  south       12'
  west        9'
    note      the long one
`)
})

describe('a room that does not close', () => {
  const room = (north: string, more = '') => `tape 1/16" + 1/32" per 10'
room den
  north       ${north}
  east        10' 8 1/4"
  south       12' 4 1/8"
  west        10' 8 1/8"
  diagonal    16' 3 15/16", from north-west to south-east
${more}`

  test('the one likely slip is asked about, never called sure', () => {
    expect(titles(room('13\' 4"‹|›'))).toEqual([
      'to be measured: Does north read 12\' 4"? Take it again, then write that',
    ])
    expect(
      mended(room('13\' 4"‹|›'), 'Does north read 12\' 4"? Take it again, then write that'),
    ).toBe(room('12\' 4"'))
  })

  test('in the units that it was typed in, with the doubts beside it', () => {
    expect(
      mended(room('about 160"‹|›?'), 'Does north read 148"? Take it again, then write that'),
    ).toBe(room('about 148"?'))
  })

  test('of several that may be wrong none is offered', () => {
    const source = room('13\' 4"')
      .replace(/ {2}diagonal.*\n/, '')
      .replace('den', 'den‹|›')
    expect(titles(source)).toEqual([])
  })

  test('a warning that was looked at is accepted in its block', () => {
    const source = room('12\' 4"')
      .replace('12\' 4 1/8"', '12\' 4 1/2"')
      .replace(/ {2}diagonal.*\n/, '')
    const asked = `${source.replace('den', 'den‹|›')}\nroom hall\n`
    expect(titles(asked)).toEqual([
      'accept: It is right as it stands: accept closing error in room den',
    ])
    expect(mended(asked, 'It is right as it stands: accept closing error in room den')).toBe(
      `${source}  accept      closing error\n\nroom hall\n`,
    )
  })

  test('one that is accepted asks nothing', () => {
    const source = room('12\' 4"')
      .replace('12\' 4 1/8"', '12\' 4 1/2"')
      .replace(/ {2}diagonal.*\n/, '')
    expect(titles(`${source.replace('den', 'den‹|›')}  accept      closing error\n`)).toEqual([])
  })
})

test('lines that are added end as the file ends its own', () => {
  const source = DEN('148 1/2‹|›').replaceAll('\n', '\r\n')
  expect(mended(source, 'Say for this file: bare numbers are inches')).toMatch(
    /^units feet-inches, bare inches\r\ntape/,
  )
  const door = "room den\r\n  north 12'\r\n    door 30\", 1' from left, to hall‹|›\r\n"
  expect(mended(door, 'Add the line: room hall')).toMatch(/hall\r\n\r\nroom hall\r\n$/)
})

test('nothing is offered away from the place', () => {
  expect(titles(`${DEN('12 4')}‹|›`)).toEqual([])
})
