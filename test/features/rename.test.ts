import { describe, expect, test } from 'vitest'
import {
  nameToChange,
  placesToRename,
  type RenameAsked,
  rename,
} from '../../server/src/features/rename.ts'
import { applied } from './applied.ts'
import { ROOT, view } from './marked.ts'

type Sources = Parameters<typeof view>[0]

/** A rename in a job that stands alone. */
function asking(sources: Sources, more: Partial<RenameAsked> = {}) {
  const { view: seen, cursor, texts } = view(sources)
  const job = { measured: seen.measured, addressOf: (file: string) => file }
  const asked: RenameAsked = { view: seen, offset: cursor, job, others: [], unread: [], ...more }
  return { asked, texts }
}

function renamed(sources: Sources, name: string, more: Partial<RenameAsked> = {}) {
  const { asked, texts } = asking(sources, more)
  const answer = rename(asked, name)
  if (answer.kind === 'refused') return answer.why
  const edits = answer.edits.map(({ address, start, end, text }) => ({
    span: { file: address, start, end },
    text,
  }))
  const after = applied(texts, edits)
  return after.size === 1 ? [...after.values()][0]! : Object.fromEntries(after)
}

const HOUSE = `job Heron Cottage
product river larch
  gap         1/4"
room hall
  north       12'
  east        4'
  south       12', called long wall
    door      30", 1' from right, to den, called main
  west        4'
  column      8" round, 4' from west, 1' from south, called post
room den
  north       12'
    door      30", 1' from left, to hall, called main
  east        9'
  south       12'
  west        9'
    closet    4', 1' from left, 2' deep
  corner      nook
  square      nook
floor up
  rooms       hall, den, den closet
  lay         river larch, running along long wall of hall
  edge        hall to den, called main
prices spring
  price       river larch, 4.19 per sq ft
`

/** The house with the cursor at the nth place of a text. */
function house(text: string, nth = 1, from = HOUSE): string {
  const parts = from.split(text)
  return `${parts.slice(0, nth).join(text)}‹|›${text}${parts.slice(nth).join(text)}`
}

describe('every place of the name, and nothing else', () => {
  test.each([
    [
      'a room, the names of its closets too',
      house('den', 1),
      'study',
      (text: string) => text.replaceAll('den', 'study'),
    ],
    [
      'a room from its block',
      house('room hall').replace('‹|›room ', 'room ‹|›'),
      'landing',
      (text: string) => text.replaceAll('hall', 'landing'),
    ],
    [
      'a wall',
      house('long wall'),
      'garden side',
      (text: string) => text.replaceAll('long wall', 'garden side'),
    ],
    [
      'a product, in price lines too',
      house('river larch'),
      'oak',
      (text: string) => text.replaceAll('river larch', 'oak'),
    ],
    [
      'a doorway on both of its sides',
      house('main', 2),
      'wide door',
      (text: string) => text.replaceAll('main', 'wide door'),
    ],
    ['a corner', house('nook', 2), 'niche', (text: string) => text.replaceAll('nook', 'niche')],
    [
      'a floor',
      house('floor up').replace('‹|›floor ', 'floor ‹|›'),
      'upstairs',
      (text: string) => text.replace('floor up', 'floor upstairs'),
    ],
    ['a price book', house('spring'), 'autumn', (text: string) => text.replace('spring', 'autumn')],
    ['a column', house('post'), 'pillar', (text: string) => text.replace('post', 'pillar')],
    ['another case', house('den', 1), 'Den', (text: string) => text.replaceAll('den', 'Den')],
  ])('%s', (_, source, name, meant) => {
    expect(renamed(source, name)).toBe(meant(HOUSE))
  })

  test('a closet that goes by its room gets a name of its own', () => {
    expect(renamed(house('den closet'), 'wardrobe')).toBe(
      HOUSE.replace('den closet', 'wardrobe').replace("2' deep", "2' deep, called wardrobe"),
    )
  })

  test('a closet of its own name keeps it when its room gets another', () => {
    const source = HOUSE.replace("2' deep", "2' deep, called den closet")
    expect(renamed(house('den', 1, source), 'study')).toBe(
      source.replaceAll('den', 'study').replaceAll('study closet', 'den closet'),
    )
  })

  test('a name that needs quotes gets them, and loses them where it needs none', () => {
    const mirrors = renamed(house('den', 1), 'hall of mirrors') as string
    expect(mirrors).toContain('room "hall of mirrors"\n')
    expect(mirrors).toContain('to "hall of mirrors", called')
    expect(mirrors).toContain('rooms       hall, "hall of mirrors", "hall of mirrors closet"')
    const back = house('"hall of mirrors"', 1, mirrors)
    expect(renamed(back, 'den')).toBe(HOUSE)
    expect(renamed(house('den', 1), '"hall of mirrors"')).toBe(mirrors)
    expect(renamed(house('river larch'), 'oak of the lake')).toContain(
      'price       oak of the lake,',
    )
  })
})

describe('refused with a sentence', () => {
  test.each([
    [
      'the name of another room',
      house('den', 1),
      'Hall',
      'Hall is already the name of another room, on line 4 of job.floor. Nothing was changed.',
    ],
    [
      'the name of a closet',
      house('hall', 2),
      'den  closet',
      'den closet is already the name of a closet, on line 17 of job.floor. Nothing was changed.',
    ],
    [
      'a room whose closet would be another room',
      house('den', 1, `${HOUSE}room bath closet\n`),
      'bath',
      'bath closet is already the name of another room, on line 26 of job.floor. Nothing was changed.',
    ],
    [
      'a way',
      house('den', 1),
      'north',
      'north has a meaning of its own everywhere and cannot be a name. A second word makes it one: north room.',
    ],
    ['nothing', house('den', 1), '  ', 'A name has one sign at least.'],
    ['a comma', house('den', 1), 'den, study', 'A name holds no comma, no quote and no line end.'],
    ['a quote', house('den', 1), 'the "den', 'A name holds no comma, no quote and no line end.'],
    [
      'a hidden sign',
      house('den', 1),
      'stu\u200bdy',
      'A sign that nobody can see stands here (U+200B).',
    ],
    [
      'a remark on a price line',
      house('river larch'),
      'oak # 2',
      'With that name line 25 of job.floor would read otherwise. Nothing was changed.',
    ],
    [
      'the name of another wall',
      house(
        'long wall',
        1,
        HOUSE.replace(
          "north       12'\n  east        4'",
          "north       12', called short wall\n  east        4'",
        ),
      ),
      'short wall',
      'short wall is already the name of another wall of hall, on line 5 of job.floor. Nothing was changed.',
    ],
    [
      'the name of another product',
      house('river larch', 1, `${HOUSE}product oak\n`),
      'oak',
      'oak is already the name of another product',
    ],
    [
      'the name of another opening',
      house(
        'main',
        1,
        HOUSE.replace(
          "called main\n  west        4'",
          "called main\n    door 30\", 1' from left, to outside, called back\n  west        4'",
        ),
      ),
      'back',
      'back is already the name of another opening of hall',
    ],
    [
      'what the lay line reads as a way',
      house('river larch'),
      'running east-west',
      'With that name line 22 of job.floor would read otherwise. Nothing was changed.',
    ],
  ])('%s', (_, source, name, why) => {
    expect(renamed(source, name)).toContain(why)
  })

  test.each([
    ['no name', 'job ‹|›Heron', 'Nothing stands here that has a name to be changed.'],
    [
      'outside',
      'room den\n  north 12\'\n    door 30", to ‹|›outside',
      'Nothing stands here that has a name to be changed.',
    ],
    [
      'a wall by its way',
      "room den\n  north 12'\n  column 8\" round, 1' from ‹|›north",
      'north is no name of its own. Give it one on its line, such as: called long wall.',
    ],
    [
      'a way of a wall with a name',
      "room den\n  north 12', called bay\n  column 8\" round, 1' from ‹|›north",
      'north is a way and stays. Its own name is bay: change it where that stands.',
    ],
  ])('%s', (_, source, why) => {
    const { view: seen, cursor } = view(source)
    expect(nameToChange(seen, cursor)).toEqual({ kind: 'refused', why })
    expect(renamed(source, 'other')).toBe(why)
  })

  test('an include that could not be read may hold the name', () => {
    const source = house('den', 1, HOUSE.replace('product', 'include lost.floor\nproduct'))
    expect(renamed(source, 'study')).toMatch(
      /^An include of job\.floor could not be read, and the name may stand there too\. .*Nothing was changed\.$/,
    )
  })

  test('a line that cannot be read may hold the name', () => {
    const source = house('den', 1, HOUSE.replace('floor up', 'floor up\n  edgy hall to den'))
    expect(renamed(source, 'study')).toBe(
      'Line 21 of job.floor cannot be read and may name den. Mend it first. Nothing was changed.',
    )
  })
})

test('a line that cannot be read and holds no such word is no hindrance', () => {
  const source = house('den', 1, HOUSE.replace('floor up', 'floor up\n  edgy hidden garden'))
  expect(renamed(source, 'study')).toContain('room study')
})

test('the name that may be changed, as it stands', () => {
  const { view: seen, cursor, ranges } = view('room "‹›den of wolves"‹|›\n'.replace('‹›', ''))
  expect(ranges).toEqual([])
  expect(nameToChange(seen, cursor)).toEqual({
    kind: 'name',
    span: { file: ROOT, start: 5, end: 20 },
    text: 'den of wolves',
  })
})

describe('a name in a shared file', () => {
  const SHARED = `product ‹|›river larch
  gap         1/4"
`
  const first = {
    'one/job.floor': 'job One\ninclude lists/shared.floor\nfloor up\n  lay         river larch\n',
    'one/lists/shared.floor': SHARED,
  }
  const second = (text: string) => ({
    'job.floor': `job Two\ninclude one/lists/shared.floor\n${text}`,
    'one/lists/shared.floor': SHARED,
  })

  function inBoth(text: string, more: Partial<RenameAsked> = {}) {
    const one = view(first)
    const two = view(second(text))
    const addressOf = (file: string) => `/${file}`
    const asked: RenameAsked = {
      view: one.view,
      offset: one.cursor,
      job: { measured: one.view.measured, addressOf },
      others: [{ measured: two.view.measured, addressOf }],
      unread: [],
      ...more,
    }
    return asked
  }

  test('is changed in all jobs that include it, and every place is listed first', () => {
    const asked = inBoth('floor down\n  lay         river larch\n')
    const places = placesToRename(asked)
    expect(places).toMatchObject({
      kind: 'places',
      places: [
        { address: '/job.floor', line: 4, lineText: '  lay         river larch' },
        { address: '/one/job.floor', line: 4, lineText: '  lay         river larch' },
        { address: '/one/lists/shared.floor', line: 1, lineText: 'product river larch' },
      ],
    })
    expect(rename(asked, 'oak')).toMatchObject({
      kind: 'edits',
      edits: [
        { address: '/job.floor', text: 'oak' },
        { address: '/one/job.floor', text: 'oak' },
        { address: '/one/lists/shared.floor', text: 'oak' },
      ],
    })
  })

  test('is changed in none where one of them has the new name already', () => {
    expect(rename(inBoth('product oak\n'), 'oak')).toEqual({
      kind: 'refused',
      why: 'oak is already the name of another product, on line 3 of job.floor. Nothing was changed.',
    })
  })

  test('is changed in none where one of them could not be read', () => {
    const why =
      'three.floor could not be read and may include a file that names river larch. Nothing was changed.'
    expect(rename(inBoth('', { unread: ['three.floor'] }), 'oak')).toEqual({ kind: 'refused', why })
    expect(placesToRename(inBoth('', { unread: ['three.floor'] }))).toEqual({
      kind: 'refused',
      why,
    })
  })

  test('a job that shares no file with the name is left alone', () => {
    const other = view('job Three\nproduct river larch\nproduct oak\n')
    const asked = inBoth('')
    const apart = { measured: other.view.measured, addressOf: (file: string) => `/three/${file}` }
    const answer = rename({ ...asked, others: [...asked.others, apart] }, 'oak')
    expect(answer.kind).toBe('edits')
  })

  test('texts that were read at different times are not mixed', () => {
    const one = inBoth('')
    const later = view({ ...second(''), 'one/lists/shared.floor': `${SHARED}\n` })
    const others = [{ measured: later.view.measured, addressOf: one.job.addressOf }]
    expect(rename({ ...one, others }, 'oak')).toEqual({
      kind: 'refused',
      why: 'one/lists/shared.floor was changed a moment ago and is being read. Ask again.',
    })
  })

  test('a room of the job alone asks nothing of jobs that could not be read', () => {
    expect(renamed(house('den', 1), 'study', { unread: ['three.floor'] })).toContain('room study')
  })
})
