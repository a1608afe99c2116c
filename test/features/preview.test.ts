import { describe, expect, test } from 'vitest'
import { asToPage } from '../../client/webview/messages.ts'
import type { Picture } from '../../server/src/features/preview/picture.ts'
import { type Preview, placeOf, previewOf, shapesAt } from '../../server/src/features/preview.ts'
import { applyChange, previewChange } from '../../server/src/features/preview-change.ts'
import { effort } from '../effort.ts'
import { HOUSE } from './house.ts'
import { view } from './marked.ts'

const preview = (source: string, before: Preview | null = null): Preview =>
  previewOf(view(source).view, before)

const whileCounting = (source: string, before: Preview | null): Preview =>
  previewOf(view(source, { counted: false }).view, before)

const idsOf = ({ scene }: Picture, kind: string): readonly string[] =>
  scene.shapes.filter((shape) => shape.kind === kind).map(({ id }) => id)

const house = preview(HOUSE)

/** Broken beyond reading, in one of its walls. */
const BROKEN = HOUSE.replace(`12' 4"`, `12' 4/`)

describe('what a preview shows', () => {
  test('rooms, walls, openings and pieces of a sound job', () => {
    const { picture } = house
    expect(picture.state).toBe('counted')
    expect(idsOf(picture, 'room')).toEqual(['room den', 'room hall'])
    expect(idsOf(picture, 'opening')).toEqual(['opening den: den to hall'])
    expect(idsOf(picture, 'piece').length).toBeGreaterThan(60)
    expect(idsOf(picture, 'working line')).toEqual(['ground: working line'])
  })

  test('every id is unlike any other', () => {
    const twice = HOUSE.replace(`to hall\n`, `to hall\n    door      20", 8' from left, to hall\n`)
    const ids = preview(twice).picture.scene.shapes.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('the course list has each piece once, in laying order, left to right', () => {
    const { courses, scene } = house.picture
    const pieces = courses.flatMap((course) => course.pieces)
    const shapes = scene.shapes.flatMap((shape) => (shape.kind === 'piece' ? [shape.id] : []))
    expect(pieces.map(({ id }) => id).toSorted()).toEqual(shapes.toSorted())
    const { published } = view(HOUSE).view.counted!.floors[0]!
    const laid = published.courses.toSorted((a, b) => a.order - b.order)
    expect(courses.map(({ course }) => course)).toEqual(laid.map(({ course }) => course))
    for (const { pieces: row } of courses)
      expect(row.map(({ piece }) => piece)).toEqual(
        row.map(({ piece }) => piece).toSorted((a, b) => a - b),
      )
  })

  test('a piece says its size, its plank and where its offcut goes', () => {
    const { courses, scene } = house.picture
    const cut = courses.flatMap(({ pieces }) => pieces).find(({ offcut }) => /is for/.test(offcut))!
    const shape = scene.shapes.find(({ id }) => id === cut.id)!
    expect(shape).toMatchObject({ kind: 'piece', plank: cut.plank })
    expect('title' in shape && shape.title).toContain(cut.size)
    expect('title' in shape && shape.title).toMatch(/from plank \d+: .*its offcut is for piece \d+/)
    const other = /\d+/.exec(cut.offcut)![0]
    const later = courses.flatMap(({ pieces }) => pieces).find((one) => `${one.piece}` === other)!
    expect(later.plank).toBe(cut.plank)
    expect(later.offcut).toContain(`an offcut of piece ${cut.piece}`)
  })

  test('the strip: boxes, what is left over, the narrowest rip and where', () => {
    const { strip, scene } = house.picture
    expect(strip.map(({ about }) => about)).toEqual(['boxes', 'spare planks', 'narrowest rip'])
    expect(strip[0]).toMatchObject({ label: 'ash', text: expect.stringMatching(/^\d+ boxes$/) })
    const [id] = strip[2]!.shapes
    expect(scene.shapes.find((shape) => shape.id === id)).toMatchObject({ kind: 'piece' })
  })

  test('edges without a kind, holds and what is still to come are told with their shapes', () => {
    const open = HOUSE.replace(`base 1/2" thick, kept\n`, '')
      .replace('floor ground', 'hold moisture test\nfloor ground')
      .replace(`12' 4 1/8"`, `12' 4 1/8"?`)
    const { strip, state } = preview(open).picture
    expect(state).toBe('open')
    const edges = strip.find(({ about }) => about === 'edges')!
    expect(edges.shapes).toContain('den: wall 0')
    const boxes = strip.find(({ about }) => about === 'boxes')!
    expect(boxes).toMatchObject({ weight: 'open', text: expect.stringMatching(/so far$/) })
  })

  test('a rule that is not met is told with its marks', () => {
    const narrow = HOUSE.replace('2" narrowest rip', '5" narrowest rip')
    const { strip, scene } = preview(narrow).picture
    const rule = strip.find(({ about }) => about === 'rules')!
    expect(rule).toMatchObject({ weight: 'alarm' })
    for (const id of rule.shapes)
      expect(scene.shapes.find((shape) => shape.id === id)).toMatchObject({ kind: 'breach' })
  })
})

describe('while one types', () => {
  const longer = HOUSE.replace(`12' 4"`, `12' 4 1/8"`)

  test('before floors are laid, rooms are of now, planks and counts of before', () => {
    const { picture } = whileCounting(longer, house)
    expect(picture.state).toBe('counting')
    const size = picture.scene.shapes.find(({ id }) => id === 'den: wall 0')
    expect(size).toMatchObject({ title: `north of den: 12' 4 1/8"` })
    expect(idsOf(picture, 'piece')).toEqual(idsOf(house.picture, 'piece'))
    expect(picture.courses).toEqual(house.picture.courses)
    expect(picture.strip).toEqual(house.picture.strip)
  })

  test('without a picture of before there are no planks yet', () => {
    const { picture } = whileCounting(HOUSE, null)
    expect(picture.state).toBe('counting')
    expect(idsOf(picture, 'piece')).toEqual([])
    expect(picture.courses).toEqual([])
  })

  test('another job keeps nothing of the one before', () => {
    const { picture } = whileCounting(HOUSE, { ...house, root: 'other.floor' })
    expect(idsOf(picture, 'piece')).toEqual([])
  })

  test('while a room cannot be read, the last good picture stays, marked old', () => {
    const { picture, places } = preview(BROKEN, house)
    expect(picture).toEqual({ ...house.picture, state: 'old' })
    expect(places).toBe(house.places)
    expect(preview(HOUSE, preview(BROKEN, house)).picture).toEqual(house.picture)
  })

  test.each([
    ['its name', 'room den', 'roo den'],
    ['the floor', 'floor ground', 'flor ground'],
    ['what it is laid with', 'lay         ash, run', 'lay         ash, rnu'],
    ['the product', 'box         12 planks', 'box         12 plnks'],
    ['half a line', 'diagonal    16', 'diag 16'],
  ])('so it is while %s is damaged', (_, sound, damaged) => {
    expect(HOUSE).toContain(sound)
    expect(preview(HOUSE.replace(sound, damaged), house).picture.state).toBe('old')
  })

  test('a room that was broken from the start holds nothing back', () => {
    const { picture } = preview(BROKEN)
    expect(picture.state).not.toBe('old')
    expect(idsOf(picture, 'room')).toEqual(['room hall'])
    expect(idsOf(picture, 'sketch wall').length).toBeGreaterThan(0)
  })

  test('a room that is taken out on purpose goes, and so do its planks', () => {
    const only = HOUSE.replace(/room hall\n( .*\n)*/, '')
      .replace(', hall\n', '\n')
      .replace(/ +door.*to hall\n/, '')
    const { picture } = preview(only, house)
    expect(picture.state).toBe('counted')
    expect(idsOf(picture, 'room')).toEqual(['room den'])
  })

  test('typing above a room changes nothing in its picture, and its places follow', () => {
    const above = HOUSE.replace('job House', 'job House\n  note        two floors down')
    const later = preview(above, house)
    const change = previewChange(house.picture, later.picture)
    expect(change).toMatchObject({ sheet: null, shapes: { gone: [], put: [] } })
    const wall = placeOf(later, 'den: wall 0')!
    expect(above.slice(wall.start, wall.end)).toContain(`12' 4"`)
  })
})

describe('a room that is being read', () => {
  const half = (walls: string) => preview(`floorscribe 1\njob J\nroom den\n${walls}`).picture

  test('walls so far, the next corner, and what is left open', () => {
    const picture = half(`  north 12'\n  east 10'\n`)
    expect(picture.state).toBe('measuring')
    const walls = picture.scene.shapes.filter((shape) => shape.kind === 'sketch wall')
    expect(walls.map(({ read }) => read)).toEqual([true, true])
    expect(walls.map(({ title }) => title)).toEqual([`north of den: 12' 0"`, `east of den: 10' 0"`])
    const corner = picture.scene.shapes.find((shape) => shape.kind === 'sketch corner')!
    expect(corner.at).toEqual(walls[1]!.line[1])
    expect(corner.back).toEqual([[walls[1]!.line[1], walls[0]!.line[0]]])
  })

  test('walls still to be read are as long as brings the room round', () => {
    const picture = half(`  north 12'\n  east ?\n  south ?\n  west 10'\n`)
    const walls = picture.scene.shapes.filter((shape) => shape.kind === 'sketch wall')
    expect(walls.map(({ read }) => read)).toEqual([true, false, false, true])
    const [, east, south, west] = walls.map(({ line: [from, to] }) => ({
      x: to.x - from.x,
      y: to.y - from.y,
    }))
    expect(east!.y).toBe(-west!.y)
    expect(south!.x).toBe(-12 * 304_800_000)
    const corner = picture.scene.shapes.find((shape) => shape.kind === 'sketch corner')!
    expect(corner.at).toEqual(walls[0]!.line[1])
    expect(corner.back).toEqual([])
  })

  test.each([
    ['nothing read at all', `  north ?\n  east ?\n  south ?\n  west ?\n`, 4],
    ['one wall', `  north 12'\n`, 1],
    ['a wall that faces the one before', `  north 12'\n  south 12'\n`, 2],
    ['two across, both to be read', `  north ?\n  east 10'\n  south ?\n  west 9' 6"\n`, 4],
    ['no wall that says a way', `  wall 12'\n`, 0],
  ])('%s: places are whole numbers', (_, walls, count) => {
    const { scene } = half(walls)
    const sketched = scene.shapes.filter((shape) => shape.kind === 'sketch wall')
    expect(sketched).toHaveLength(count)
    for (const { line } of sketched)
      for (const { x, y } of line) expect([x, y].every(Number.isSafeInteger)).toBe(true)
  })

  test('it stands beside the rooms that are measured', () => {
    const { scene } = preview(`${HOUSE}room loft\n  north 9'\n  east 8'\n`).picture
    const east = scene.shapes.flatMap((shape) =>
      shape.kind === 'room' ? shape.ring.map(({ x }) => x) : [],
    )
    const loft = scene.shapes.flatMap((shape) =>
      shape.kind === 'sketch wall' ? shape.line.map(({ x }) => x) : [],
    )
    expect(Math.min(...loft)).toBeGreaterThan(Math.max(...east))
    expect(scene.high.x).toBeGreaterThan(Math.max(...loft))
  })
})

describe('text and drawing', () => {
  const marked = view(
    HOUSE.replace('room den', '‹room den›')
      .replace(`  west        10' 8 1/8"`, `  west        ‹|›10' 8 1/8"`)
      .replace('floor ground', 'floor gr‹|›ound'),
  )
  const shown = previewOf(marked.view, null)
  const at = (place: number) => shapesAt(shown, 'job.floor', place)

  test('a wall lights up from its line, and its length with it', () => {
    expect(at(marked.cursors[0]!)).toEqual(['den: wall 3', 'den: wall 3 length'])
  })

  test('the whole line finds what a place before its name does not', () => {
    const [line] = marked.ranges
    expect(at(line!.start)).toEqual([])
    expect(shapesAt(shown, 'job.floor', line!.start, line!.end)).toContain('room den')
  })

  test('a floor lights its working line and its ends, not every piece', () => {
    const ids = at(marked.cursors[1]!)
    expect(ids).toContain('ground: working line')
    expect(ids.filter((id) => /piece/.test(id))).toEqual([])
  })

  test('a doorway lights up from its lines in both rooms', () => {
    const rooms = (line: string) => `floorscribe 1
job two
units feet-inches
walls 4 1/2" thick
room a
  north 10'
  east 8'
    door 30", 2' from left, to b
  south 10'
  west 8'
room b
  north 10'
  east 8'
  south 10'
  west 8'
    ${line}
`
    const both = view(rooms(`do‹|›or 30", 3' 6" from left, to a`))
    const there = previewOf(both.view, null)
    expect(shapesAt(there, 'job.floor', both.cursor)).toEqual(['opening a: a to b'])
  })

  test('another file lights nothing', () => {
    expect(shapesAt(shown, 'products.floor', marked.cursor)).toEqual([])
  })

  test('a piece leads to its floor, an opening to its line; what nothing was drawn from to nothing', () => {
    const text = marked.texts.get('job.floor')!
    const said = (id: string) => {
      const span = placeOf(shown, id)
      return span === null ? null : text.slice(span.start, span.end)
    }
    expect(said('ground: piece 1')).toBe('ground')
    expect(said('opening den: den to hall')).toContain('door      30", 14"')
    expect(said('walls')).toBeNull()
    expect(said('no such shape')).toBeNull()
  })
})

describe('the change from one picture to the next', () => {
  const texts = [
    HOUSE,
    BROKEN,
    HOUSE.replace(`12' 4"`, `12' 5"`),
    HOUSE.replace('running east-west', 'running north-south'),
    HOUSE.replace(`9' 0"`, '?'),
    HOUSE.replace(`10' 8 1/4"`, `11' 8 1/4"`),
    HOUSE.replace('room den', 'room study').replaceAll('den', 'study'),
    HOUSE.replace(/floor ground\n( .*\n)*/, ''),
    '',
    `${HOUSE}room loft\n  north 9'\n`,
    `${HOUSE}room loft\n  north 9'\n  east 8'\n`,
    HOUSE.replace('2" narrowest rip', '5" narrowest rip'),
  ]

  test('leads to it, over the wire and back, from each to each', { timeout: 60_000 }, () => {
    const views = texts.map((text) => [view(text).view, view(text, { counted: false }).view])
    let checked = 0
    const begun = views.slice(0, effort(2, views.length))
    for (const [from] of begun)
      for (const later of views.flat()) {
        const before = previewOf(from!, null)
        const after = previewOf(later, before)
        const sent: unknown = JSON.parse(
          JSON.stringify({ type: 'preview', change: previewChange(before.picture, after.picture) }),
        )
        const message = asToPage(sent)
        expect(message).not.toBeNull()
        if (message?.type !== 'preview') continue
        expect(applyChange(before.picture, message.change)).toEqual(after.picture)
        checked += 1
      }
    expect(checked).toBe(begun.length * texts.length * 2)
  })

  test('the first is the whole, and a part of nothing leads nowhere', () => {
    expect(previewChange(null, house.picture)).toEqual({ kind: 'whole', picture: house.picture })
    const part = previewChange(house.picture, house.picture)
    expect(applyChange(null, part)).toBeNull()
    expect(applyChange(null, previewChange(null, house.picture))).toBe(house.picture)
  })

  test('another length of one wall leaves the other room, and what hangs on it, alone', () => {
    const change = previewChange(house.picture, preview(texts[2]!, house).picture)
    expect(change.kind).toBe('part')
    if (change.kind !== 'part') return
    const touched = change.shapes.put.map(({ item }) => item.id)
    expect(touched).toContain('den: wall 0')
    expect(touched).not.toContain('room hall')
  })
})
