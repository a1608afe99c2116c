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

/** A strip ripped off, from one edge of the plank, from the other, or out of its middle. */
const ripped = (width: number, low: boolean, high: boolean): Partial<Blank> => ({
  across: { width: inches(width), low, high },
})

/** Cuts a blank out of the rests that an earlier course left, whichever fits first. */
function cutOut(stock: Stock, wanted: Blank, order: number) {
  const fit = fitOf(stock, wanted, order)
  return fit && cutFrom(stock, fit, wanted, order)
}

const inInches = (span: readonly [number, number]) => span.map((each) => each / inches(1))

describe('where in a rest a piece is cut (computed)', () => {
  const leftRest = () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(20, START), 1)
    return stock
  }
  const rightRest = () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(20, END), 1)
    return stock
  }

  test('one that may lie anywhere leaves the made end to a later one', () => {
    expect(inInches(cutOut(leftRest(), blank(10), 2)!.along)).toEqual([17.875, 27.875])
    expect(inInches(cutOut(rightRest(), blank(10), 2)!.along)).toEqual([20.125, 30.125])
  })

  test('one that is glued on its right takes the made end on its left', () => {
    expect(inInches(cutOut(leftRest(), blank(10, { cutRight: true }), 2)!.along)).toEqual([0, 10])
  })

  test.each([
    ['left', leftRest, { cutLeft: true }, [1, inches(27.875)]],
    ['right', rightRest, { cutRight: true }, [inches(20.125), PLANK - 1]],
  ] as const)('a made end on the %s is cut off before it is glued', (_, rest, glued, along) => {
    const whole = inches(27.875)
    expect(fitOf(rest(), { ...blank(0, glued), to: whole }, 2)).toBeNull()
    expect(cutOut(rest(), { ...blank(0, glued), to: whole - 1 }, 2)!.along).toEqual(along)
  })

  test('an end that is cut already may be glued as it is', () => {
    expect(fitOf(leftRest(), blank(27.875, { cutRight: true }), 2)).not.toBeNull()
    expect(fitOf(rightRest(), blank(27.875, { cutLeft: true }), 2)).not.toBeNull()
  })

  test('both made ends are cut off where both are glued', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(48, { left: true, right: true }, 3), 1)
    const glued = { ...ripped(3, false, true), cutLeft: true, cutRight: true }
    expect(fitOf(stock, { ...blank(0, glued), to: PLANK - 1 }, 2)).toBeNull()
    expect(cutOut(stock, { ...blank(0, glued), to: PLANK - 2 }, 2)!.along).toEqual([1, PLANK - 1])
  })

  test('what meets a piece at both ends is as long as its strip, no less', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(48, { left: true, right: true }, 3), 1)
    const between = { ...ripped(3, false, true), left: true, right: true }
    expect(fitOf(stock, blank(40, between), 2)).toBeNull()
    expect(fitOf(stock, blank(48, between), 2)).not.toBeNull()
  })

  test('nothing is cut from a strip that is too narrow', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(48, { right: true }, 3), 1)
    expect(fitOf(stock, blank(40, ripped(3.875, false, true)), 2)).not.toBeNull()
    expect(fitOf(stock, blank(40, ripped(4, false, true)), 2)).toBeNull()
  })

  test('a strip ripped on both sides leaves the made edge to a later one', () => {
    const inner = ripped(2, false, false)
    const whole = stockOf()
    expect(inInches(cutNew(whole, PLANK, blank(48, inner), 1).across)).toEqual([0, 2])
    const low = stockOf()
    cutNew(low, PLANK, blank(48, ripped(3, false, true)), 1)
    expect(inInches(cutOut(low, blank(48, inner), 2)!.across)).toEqual([1.875, 3.875])
    const high = stockOf()
    cutNew(high, PLANK, blank(48, ripped(3, true, false)), 1)
    expect(inInches(cutOut(high, blank(48, inner), 2)!.across)).toEqual([3.125, 5.125])
  })
})

describe('what is kept (computed)', () => {
  test('nothing to begin with', () => {
    const { limits } = stockOf()
    expect(newStock(limits)).toEqual({ limits, planks: [], waiting: [], fresh: [] })
  })

  test('a rest of just the least size', () => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(43.875, END), 1)
    cutNew(stock, PLANK, blank(43.875 + 1 / 64, END), 1)
    expect(waiting(stock, 2)).toEqual([4])
    const strips = stockOf()
    cutNew(strips, PLANK, blank(48, ripped(5.875, true, false)), 1)
    cutNew(strips, PLANK, blank(48, ripped(5.875 + 1 / 64, true, false)), 1)
    expect(waiting(strips, 2)).toEqual([48])
  })

  test('a rest without a made end only where one piece may fill a course', () => {
    const left = (shortestLoose: number | null) => {
      const least = { shortest: inches(4), narrowest: inches(1), shortestLoose }
      const stock = newStock(stockLimits(plankRules({ toSpare: 0 }), least))
      cutNew(stock, PLANK, blank(20, END), 1)
      cutOut(stock, blank(10, START), 2)
      return waiting(stock, 3)
    }
    expect(left(null)).toEqual([])
    expect(left(inches(17.75))).toEqual([17.75])
    expect(left(inches(17.75) + 1)).toEqual([])
  })

  test('of two alike the one of the plank opened first is taken first', () => {
    const stock = stockOf()
    for (const _ of [0, 1]) cutNew(stock, PLANK, blank(20, END), 1)
    const [first, second] = readyRests(stock, 2, 0)
    for (const rest of [second!, first!])
      cutFrom(stock, { rest, turned: false }, blank(10, START), 2)
    expect(readyRests(stock, 3, 0).map(({ plank }) => plank)).toEqual([0, 1])
  })

  test('a rest is gone from the pile when its courses are over', () => {
    const stock = stockOf({ pile: { pieces: 8, courses: 2 } })
    cutNew(stock, PLANK, blank(30, END), 1)
    const left = [1, 2, 3].map((order) => {
      endCourse(stock, order)
      return stock.waiting.length
    })
    expect(left).toEqual([1, 1, 0])
  })

  test('strips do not count in the pile', () => {
    const stock = stockOf({ pile: { pieces: 2, courses: 6 } })
    cutNew(stock, PLANK, blank(48, { right: true }, 3), 1)
    for (const _ of [0, 1]) cutNew(stock, PLANK, blank(20, END), 1)
    endCourse(stock, 1)
    expect(stock.waiting.map(({ length }) => length / inches(1))).toEqual([48, 27.875, 27.875])
  })

  test('no more than 200 strips are kept', () => {
    const stock = stockOf()
    for (let i = 0; i < 203; i += 1) cutNew(stock, PLANK, blank(48, { right: true }, 3), 1)
    endCourse(stock, 1)
    expect(stock.waiting.length).toBe(200)
  })

  test.each([
    ['above', 'just beside it', ripped(3, true, false), 3, 0],
    ['above', 'by less than the kerf', ripped(3, true, false), 3.0625, 2],
    ['below', 'just beside it', ripped(3, false, true), 3, 0],
    ['below', 'by less than the kerf', ripped(3, false, true), 3.0625, 2],
  ] as const)('a strip %s a cut that passes %s', (_, __, strip, width, since) => {
    const stock = stockOf()
    cutNew(stock, PLANK, blank(30, { ...strip, left: true }), 1)
    const [crosscut] = readyRests(stock, 2, inches(7))
    const beside = { ...strip.across!, width: inches(width) }
    cutFrom(stock, { rest: crosscut!, turned: false }, blank(10, { across: beside }), 2)
    expect(stock.waiting.map((rest) => [rest.width / inches(1), rest.since])).toEqual([
      [3.875, since],
    ])
  })
})
