import { describe, expect, test } from 'vitest'
import type { PublishedFloor } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { HAND_MADE, layouts } from './hand-made.ts'

/** The numbers that only one value makes true, each as its holder and its key. */
function exactNumbers(floor: PublishedFloor): [Record<string, number>, string][] {
  const { joints, courses, planks, breaches, area } = floor
  const found: [Record<string, number>, string][] = []
  const visit = (node: object) => {
    for (const [key, child] of Object.entries(node)) {
      if (typeof child === 'number') found.push([node as Record<string, number>, key])
      else if (typeof child === 'object') visit(child)
    }
  }
  visit([joints, courses, planks, breaches, area.unsplit])
  return found
}

describe('a layout with one figure moved is rejected', () => {
  test('any vertex of any piece moved by 1 nm', () => {
    for (const floor of HAND_MADE) {
      for (const [i, piece] of floor.pieces.entries()) {
        for (const j of piece.ring.keys()) {
          for (const axis of [0, 1]) {
            const copy = structuredClone(floor)
            ;(copy.pieces[i]!.ring[j] as [number, number])[axis]! += 1
            expect(verify(layouts(copy)).sound).toBe(false)
          }
        }
      }
    }
  })

  test('any number of a joint, course, plank, breach or unsplit corner moved by 1', () => {
    for (const floor of HAND_MADE) {
      const count = exactNumbers(structuredClone(floor)).length
      for (let i = 0; i < count; i += 1) {
        const copy = structuredClone(floor)
        const [holder, key] = exactNumbers(copy)[i]!
        holder[key]! += 1
        expect(verify(layouts(copy)).sound, `${floor.floor}: number ${i}`).toBe(false)
      }
    }
  })
})
