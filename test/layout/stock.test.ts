import { describe, expect, test } from 'vitest'
import type { Blank } from '../../server/src/layout/jointing.ts'
import {
  cutFrom,
  cutNew,
  endCourse,
  firstFit,
  newStock,
  readyRests,
  type Stock,
  stockLimits,
} from '../../server/src/layout/stock.ts'
import { inches, plankRules } from './made-floors.ts'

const PLANK = inches(48)

function stockOf(changes: Parameters<typeof plankRules>[0] = {}): Stock {
  const least = { shortest: inches(4), narrowest: inches(1), shortestLoose: inches(4) }
  return newStock(stockLimits(plankRules({ toSpare: 0, ...changes }), least))
}

function blank(length: number, needs: Partial<Blank> = {}, width = 7): Blank {
  const across = { width: inches(width), low: true, high: width === 7 }
  return {
    from: 0,
    to: inches(length),
    across,
    left: false,
    right: false,
    cutLeft: false,
    cutRight: false,
    ...needs,
  }
}

const END = { left: true } as const
const START = { right: true } as const

function waiting(stock: Stock, order: number) {
  return readyRests(stock, order, 0).map((rest) => rest.length / inches(1))
}

function fitOf(stock: Stock, wanted: Blank, order: number) {
  return firstFit(stock.limits, readyRests(stock, order, 0), wanted, -1)
}

describe('which piece fits where (trade rules, computed)', () => {
  test('the rest of an end piece can only start a later course', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(34, END), 1)
    expect(fitOf(stock, blank(10, START), 1)).toBeNull()
    expect(fitOf(stock, blank(10, START), 2)).not.toBeNull()
    expect(fitOf(stock, blank(10, END), 2)).toBeNull()
  })

  test('the rest of a start piece can only end a later course', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(20, START), 1)
    expect(fitOf(stock, blank(10, START), 2)).toBeNull()
    const fit = fitOf(stock, blank(10, END), 2)!
    expect(cutFrom(stock, fit, blank(10, END), 2).along).toEqual([0, inches(10)])
  })

  test('what has both ends cut serves a course of one piece only', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(10, END), 1)
    cutFrom(stock, fitOf(stock, blank(10, START), 2)!, blank(10, START), 2)
    expect(fitOf(stock, blank(10, START), 3)).toBeNull()
    expect(fitOf(stock, blank(10, END), 3)).toBeNull()
    expect(fitOf(stock, blank(10), 3)).not.toBeNull()
  })

  test('turned by half a turn it serves the other end, where the lock is symmetric', () => {
    const stock = stockOf({ laid: 'either way' })
    cutNew(stock, PLANK, blank(34, END), 1)
    const fit = fitOf(stock, blank(10, END), 2)!
    expect(fit.turned).toBe(true)
    expect(cutFrom(stock, fit, blank(10, END), 2)).toEqual({
      plank: 0,
      along: [inches(38), PLANK],
      across: [0, inches(7)],
      turned: true,
    })
  })
})

describe('what is left', () => {
  test('the kerf chain of a 130 in course (computed)', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(34, END), 1)
    expect(waiting(stock, 2)).toEqual([13.875])
    cutFrom(stock, fitOf(stock, blank(13.875, START), 2)!, blank(13.875, START), 2)
    cutNew(stock, PLANK, blank(20.125, END), 2)
    expect(waiting(stock, 3)).toEqual([27.75])
  })

  test('an end and a start of one plank leave a quarter inch to spare as well', () => {
    const stock = stockOf({ toSpare: inches(1 / 4) })
    cutNew(stock, PLANK, blank(34, END), 1)
    expect(waiting(stock, 2)).toEqual([13.625])
  })

  test('a rip leaves a strip with the far edge, as long as the piece', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(48, { right: true }, 3), 1)
    const [strip] = readyRests(stock, 30, 0)
    expect(strip).toMatchObject({ along: [0, PLANK], across: [inches(3.125), inches(7)] })
    expect(strip).toMatchObject({ left: true, right: true, low: false, high: true })
  })

  test('a crosscut rest waits so many courses, a strip till the end', () => {
    const stock = stockOf({ pile: { pieces: 8, courses: 2 } })
    cutNew(stock, PLANK, blank(30, { left: true }, 3), 1)
    expect(waiting(stock, 3)).toHaveLength(2)
    expect(waiting(stock, 4)).toEqual([30])
  })

  test('a strip waits no longer once another piece is cut across its width', () => {
    const stock = stockOf({ pile: { pieces: 8, courses: 2 } })
    cutNew(stock, PLANK, blank(30, { left: true }, 3), 1)
    cutFrom(stock, fitOf(stock, blank(17, START), 2)!, blank(17, START), 2)
    expect(waiting(stock, 4)).toEqual([30])
    expect(waiting(stock, 5)).toEqual([])
  })

  test('beyond the pile the shortest go to scrap', () => {
    const stock = stockOf({ pile: { pieces: 2, courses: 6 } })
    for (const length of [20, 30, 40]) cutNew(stock, PLANK, blank(length, END), 1)
    endCourse(stock, 1)
    expect(waiting(stock, 2)).toEqual([17.875, 27.875])
  })

  test('no plank serves one course twice', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(10, END, 3), 1)
    cutFrom(stock, fitOf(stock, blank(8, START), 2)!, blank(8, START), 2)
    expect(waiting(stock, 2)).toEqual([])
  })
})
