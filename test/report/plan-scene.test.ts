import { describe, expect, test } from 'vitest'
import { laidShapes, planScene } from '../../server/src/report/plan-scene.ts'
import type { Scene, Shape } from '../../server/src/report/scene.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { subjectOf } from '../../server/src/report/subject-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { house } from './house.ts'
import { laid } from './laid.ts'

const FOOT = 304_800_000
const ofKind = ({ shapes }: Scene, ...kinds: readonly Shape['kind'][]) =>
  shapes.filter(({ kind }) => kinds.includes(kind))

describe('the plan for a screen', () => {
  const scene = planScene(house())

  test('has what the sheet has, but for the sheet itself', () => {
    const kinds = new Set(sceneOf(house()).shapes.map(({ kind }) => kind))
    const sheet: readonly Shape['kind'][] = [
      'note',
      'rule',
      'swatch',
      'scale bar',
      'north',
      'laying',
    ]
    for (const kind of sheet) kinds.delete(kind)
    expect(new Set(scene.shapes.map(({ kind }) => kind))).toEqual(kinds)
  })

  test('lettering is larger than on paper, and never so large that it fills the rooms', () => {
    expect(scene.em).toBeGreaterThan(sceneOf(house()).em)
    const far = house()
    const rooms = far.rooms.map((room, i) => ({ ...room, network: 100 + i }))
    const many = Array.from({ length: 40 }, (_, i) =>
      rooms.map((room) => ({ ...room, network: room.network + 10 * i })),
    )
    const wide = planScene({ ...far, rooms: many.flat(), floors: [], doorways: [] })
    expect(wide.high.x - wide.low.x).toBeGreaterThan(400 * FOOT)
    expect(wide.em).toBe((FOOT * 9) / 12)
  })

  test('floors that are kept stay as they were, shape by shape', () => {
    const kept = laidShapes(scene.shapes)
    const again = planScene({ ...house(), floors: [] }, kept)
    expect(again.shapes).toEqual(scene.shapes)
    const bare = planScene({ ...house(), floors: [] })
    expect(ofKind(bare, 'piece', 'seam', 'joint', 'working line', 'rip label')).toEqual([])
  })
})

describe('a room that is half read', () => {
  const scene = planScene(
    subjectOf(laid(`floorscribe 1\njob J\nroom den\n  north 12'\n  east ?\n  south 12'\n`)),
  )

  test('is drawn in print as on a screen: read walls heavy, the others pale, the corner dotted', () => {
    const drawing = svg(scene)
    expect(drawing).not.toMatch(/NaN|Infinity|undefined|var\(/)
    expect(drawing.match(/class="read"/g)).toHaveLength(2)
    expect(drawing.match(/class="to-read"/g)).toHaveLength(1)
    expect(drawing).toMatch(/<circle [^>]*stroke-dasharray/)
  })

  test('says what is read and what is not', () => {
    const titles = scene.shapes.flatMap((shape) => ('title' in shape ? [shape.title] : []))
    expect(titles).toEqual([
      `north of den: 12' 0"`,
      'east of den: to be read',
      `south of den: 12' 0"`,
    ])
    const [label] = ofKind(scene, 'label')
    expect(label).toMatchObject({ lines: [{ text: 'den' }, { text: '2 of 3 walls read' }] })
  })

  test('is no part of the drawing for paper, which says that it is missing', () => {
    const sheet = sceneOf(subjectOf(laid(`floorscribe 1\njob J\nroom den\n  north 12'\n`)))
    expect(ofKind(sheet, 'sketch wall', 'sketch corner')).toEqual([])
    expect(JSON.stringify(sheet)).toContain('Not drawn')
  })
})
