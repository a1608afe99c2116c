import { describe, expect, test } from 'vitest'
import type { Floor, FloorEdge, Wall } from '../../server/src/job/job.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import {
  beyondOf,
  breakBetween,
  calledOf,
  floorSaid,
  type Meeting,
  meetingEdge,
  wallEdge,
} from '../../server/src/layout/edge-said.ts'
import {
  breakLine,
  closet,
  doorway,
  edgeBetween,
  edgeOfWall,
  floor,
  inch,
  job,
  name,
  room,
  survey,
} from './house.ts'

const at = (start: number) => ({ file: 'test.floor', start, end: start + 1 })
const said = (given: Partial<Floor>) => floorSaid(job(), floor(['hall'], given))
const edges = (...lines: readonly FloorEdge[]) => said({ edges: lines })

describe('a wall', () => {
  const wallOf = (more: Partial<Wall> = {}) => {
    const { room: hall } = room('hall', [0, 0, 120, 48], {
      walls: { east: { span: at(1), ...more } },
    })
    return (of: ReturnType<typeof said>) => wallEdge(of, hall, hall.walls[1]!)
  }
  const own = { kind: 'tub', gap: inch(1 / 8), trim: 'bead', span: at(2) } as const

  test('is as the floor says, then as it says itself, then as its room has its base', () => {
    const line = edgeOfWall('hall', 1, { kind: 'carpet', gap: 5, trim: 'strip', span: at(3) })
    expect(wallOf({ edge: own })(edges(line))).toEqual({
      kind: 'carpet',
      gap: 5,
      trim: 'strip',
      label: 'east of hall',
      room: 'hall',
      span: at(3),
      parts: false,
      wall: '1 hall',
    })
    const itself = { kind: 'tub', gap: inch(1 / 8), trim: 'bead', span: at(2) }
    expect(wallOf({ edge: own })(edges())).toMatchObject(itself)
    const none = { kind: 'base kept', gap: inch(1 / 4), trim: null, span: at(1) }
    expect(wallOf()(edges())).toMatchObject(none)
  })

  test('takes from each what the other leaves open', () => {
    const line = edgeOfWall('hall', 1, { span: at(3) })
    const open = { kind: null, gap: null, trim: null, span: null }
    expect(wallOf({ edge: own })(edges(line))).toMatchObject({
      kind: 'tub',
      gap: inch(1 / 8),
      trim: 'bead',
      span: at(3),
    })
    expect(wallOf({ edge: open })(edges(line))).toMatchObject({ kind: 'base kept', span: at(3) })
  })

  test('is as the first of two lines says, and as no line of another wall or of a doorway', () => {
    const lines = [
      edgeBetween('hall', 'den', { kind: 'carpet' }),
      edgeOfWall('den', 1, { kind: 'hearth' }),
      edgeOfWall('hall', 2, { kind: 'cabinet' }),
      edgeOfWall('hall', 1, { kind: 'nosing' }),
      edgeOfWall('hall', 1, { kind: 'carpet' }),
    ]
    expect(wallOf()(edges(...lines)).kind).toBe('nosing')
  })

  test('of a floor without a product has no gap', () => {
    expect(wallOf()(said({ product: null })).gap).toBe(0)
    expect(wallOf()(said({ product: name('pine') })).gap).toBe(0)
  })
})

describe('a step', () => {
  const step = (of: ReturnType<typeof said>, edge: Partial<Wall['edge']> = {}) => {
    const given = { kind: null, gap: null, trim: null, span: null, ...edge }
    const { room: hall } = room('hall', [0, 0, 120, 48], {
      walls: { south: { stair: 'down', edge: given, span: at(1) } },
    })
    return wallEdge(of, hall, hall.walls[2]!)
  }

  test('ends as its wall line says, or the line to the stair', () => {
    const ofWall = edgeOfWall('hall', 2, { kind: 'open edge', trim: 'cap', span: at(3) })
    const toStair = edgeBetween('hall', 'stair', { kind: 'carpet', gap: 7, span: at(4) })
    expect(step(edges(toStair, ofWall))).toEqual({
      kind: 'open edge',
      gap: 0,
      trim: 'cap',
      label: 'hall to stair',
      room: 'hall',
      span: at(3),
      parts: false,
      wall: null,
    })
    const second = { kind: 'carpet', gap: 7, trim: null, span: at(4) }
    expect(step(edges(toStair))).toMatchObject(second)
  })

  test('ends as it says itself, at the back of a nosing where it has a trim', () => {
    expect(step(edges(), { kind: 'open edge', trim: 'cap' })).toMatchObject({
      kind: 'open edge',
      trim: 'cap',
      span: at(1),
    })
    expect(step(edges(), { trim: 'stair nosing' })).toMatchObject({ kind: 'nosing', gap: 0 })
    expect(step(edges(edgeOfWall('hall', 2)), { kind: 'carpet' }).kind).toBe('carpet')
    expect(step(edges())).toMatchObject({ kind: null, gap: 0, trim: null })
  })
})

test('two recesses of a room are two walls, whatever they are called', () => {
  const alcove = (start: number) => ({ ...closet('alcove', 0, 48, 4), span: at(start) })
  // South and north side are those of alcoves called alike.
  const edgesOf = [0, null, 1, null].map((recess, wall) => ({ wall, recess }))
  const bunk = room('bunk', [0, 0, 120, 100], {
    room: { recesses: [alcove(5), alcove(6)] },
    surveyed: { edges: edgesOf },
  })
  const { rim } = floorArea(job(), survey([bunk]), floor(['bunk']))
  const [south, , north] = rim
  const expected = { kind: 'base kept', gap: inch(1 / 4), label: 'alcove of bunk', trim: null }
  expect(south).toMatchObject({ ...expected, span: at(5) })
  expect(north).toMatchObject({ ...expected, span: at(6) })
  expect(south!.wall).not.toBeNull()
  expect(south!.wall).not.toBe(north!.wall)
  expect(rim.length).toBe(4)
})

describe('where two floors meet', () => {
  const meeting = (more: Partial<Meeting> = {}): Meeting => ({
    from: 'hall',
    room: 'hall',
    label: 'hall to den',
    to: 'den',
    called: null,
    trim: null,
    slider: false,
    parts: false,
    span: at(1),
    ...more,
  })

  test.each([
    ['hall', 'den'],
    ['den', 'hall'],
  ])('a line says how, told from either side: from %s to %s', (from, to) => {
    const line = edgeBetween(from, to, { kind: 'carpet', gap: 9, trim: 'strip', span: at(3) })
    const expected = { kind: 'carpet', gap: 9, trim: 'strip', span: at(3), parts: false }
    expect(meetingEdge(edges(line), meeting())).toMatchObject(expected)
  })

  test('a line with a name is for the opening that has it, others for any', () => {
    const called = (text: string) => ({
      ...edgeBetween('hall', 'den', { kind: 'carpet' }).where,
      called: name(text),
    })
    const arch = edgeBetween('hall', 'den', { kind: 'carpet', where: called('arch') as never })
    const any = edgeBetween('hall', 'den', { kind: 'transition' })
    const of = edges(arch, any)
    expect(meetingEdge(of, meeting({ called: 'arch' })).kind).toBe('carpet')
    expect(meetingEdge(of, meeting({ called: 'door' })).kind).toBe('transition')
    expect(meetingEdge(of, meeting()).kind).toBe('transition')
  })

  test('nothing is said where nothing is named beyond, or of another room', () => {
    const line = edgeBetween('hall', 'den', { kind: 'carpet' })
    expect(meetingEdge(edges(line), meeting({ to: null })).kind).toBeNull()
    expect(meetingEdge(edges(line), meeting({ to: 'bath' })).kind).toBeNull()
    const wall = edgeOfWall('hall', 1, { kind: 'tub' })
    expect(meetingEdge(edges(wall), meeting()).kind).toBeNull()
  })

  test('a break parts it, with its own trim and place where no line is', () => {
    const cut = { ...breakLine('den', 'hall'), span: at(4) }
    const broken = said({ breaks: [cut] })
    const parts = { parts: true, trim: 'reducer' }
    expect(meetingEdge(broken, meeting(parts))).toMatchObject({
      kind: 'transition',
      gap: inch(3 / 8),
      trim: 't moulding',
      span: at(4),
      parts: true,
    })
    const untold = { kind: 'transition', trim: 'reducer', span: at(1) }
    expect(meetingEdge(edges(), meeting(parts))).toMatchObject(untold)
    const whole = { kind: 'transition', trim: 'reducer', span: at(1), parts: false }
    expect(meetingEdge(broken, meeting({ trim: 'reducer' }))).toMatchObject(whole)
    expect(breakBetween(broken, { from: 'hall', to: null, called: null })).toBeUndefined()
  })

  test('a slider is one whatever its trim', () => {
    expect(meetingEdge(edges(), meeting({ slider: true, trim: 'cap' })).kind).toBe('slider')
    expect(meetingEdge(edges(), meeting({ trim: 'cap' })).kind).toBe('transition')
    expect(meetingEdge(edges(), meeting()).kind).toBeNull()
  })
})

describe('a doorway', () => {
  type Face = Parameters<typeof doorway>[2]
  const face: Face = [
    [40, 48],
    [70, 48],
  ]
  const of = (more: NonNullable<Parameters<typeof doorway>[4]>) =>
    doorway('hall', null, face, face, more)

  test('leads to what it is placed at, else to what its line names, else to what its text says', () => {
    expect(beyondOf(of({ to: 'den', opened: { to: name('Bath') }, toText: 'Loft' }))).toBe('den')
    expect(beyondOf(of({ opened: { to: name('Bath') }, toText: 'Loft' }))).toBe('bath')
    expect(beyondOf(of({ toText: 'Loft' }))).toBe('loft')
    expect(beyondOf(of({ toText: '' }))).toBeNull()
  })

  test('is called as from whichever side has a name', () => {
    const other = { ...of({}).opening, name: name('Arch') }
    expect(calledOf(of({ opened: { name: name('Gate') }, other }))).toBe('gate')
    expect(calledOf(of({ other }))).toBe('arch')
    expect(calledOf(of({}))).toBeNull()
  })
})
