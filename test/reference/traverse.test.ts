import { describe, expect, test } from 'vitest'
import { spreadMisclosure } from '../../server/src/survey/spread.ts'
import {
  type Course,
  compassRule,
  misclosureOf,
  transitRule,
} from '../../server/src/survey/traverse.ts'
import { cosineOfDegrees, sineOfDegrees } from '../../server/src/units/angle.ts'
import { type Ratio, ratio, subtract } from '../../server/src/units/ratio.ts'

/** "126-55-17" as degrees. */
const degrees = (text: string): Ratio => {
  const [d, m = '0', s = '0'] = text.split('-')
  return ratio(Number(d) * 3600 + Number(m) * 60 + Number(s), 3600)
}

/** An azimuth (clockwise from north), or a bearing such as S68-05-35W. */
const azimuth = (text: string): Ratio => {
  const found = /^([NS])(.*)([EW])$/.exec(text)
  if (!found) return degrees(text)
  const angle = degrees(found[2]!)
  const fromNorth = found[1] === 'N' ? angle : subtract(ratio(180), angle)
  return found[3] === 'E' ? fromNorth : subtract(ratio(360), fromNorth)
}

const course = (length: number, way: string): Course => ({
  length,
  east: length * sineOfDegrees(azimuth(way)),
  north: length * cosineOfDegrees(azimuth(way)),
})

/** "472.68 S68-05-35W | …" */
const traverse = (text: string): Course[] =>
  text.split(' | ').map((part) => {
    const [length, way] = part.split(' ')
    return course(Number(length), way!)
  })

const norths = (courses: readonly Course[]) => courses.map(({ north }) => north)
const easts = (courses: readonly Course[]) => courses.map(({ east }) => east)

const expectNear = (actual: readonly number[], printed: readonly number[], within: number) => {
  expect(actual.length).toBe(printed.length)
  printed.forEach((value, i) => {
    expect(Math.abs(actual[i]! - value), `${actual[i]} against ${value}`).toBeLessThanOrEqual(
      within,
    )
  })
}

const cornersFrom = (start: readonly [number, number], courses: readonly Course[]) => {
  let [north, east] = start
  return courses.map((leg) => {
    north += leg.north
    east += leg.east
    return [north, east] as const
  })
}

const areaOf = (points: readonly (readonly [number, number])[]) => {
  const twice = points.reduce((sum, [n, e], i) => {
    const [nextN, nextE] = points[(i + 1) % points.length]!
    return sum + e * nextN - nextE * n
  }, 0)
  return Math.abs(twice) / 2
}

describe('B1: loop traverse by the compass rule [J. Mahun, Open Access Surveying, ch. G and I]', () => {
  const legs = traverse(
    '472.68 S68-05-35W | 216.13 N19-46-00W | 276.52 N45-55-20E | 382.24 S54-59-15E',
  )

  test('latitudes and departures as printed, to half their last digit', () => {
    expectNear(norths(legs), [-176.357, 203.395, 192.357, -219.312], 0.0006)
    expectNear(easts(legs), [-438.548, -73.093, 198.651, 313.065], 0.0006)
  })

  test('misclosure: computed 0.1112, 1:12116 (print rounds its latitudes: 0.1119, 1:12046)', () => {
    const miss = misclosureOf(legs)
    expectNear([miss.north, miss.east, miss.length], [0.083, 0.0744, 0.1112], 0.0006)
    expect(miss.perimeter).toBeCloseTo(1347.57, 9)
    expect(miss.ratio).toBe(12116)
  })

  test('adjusted corners as printed, and the area computed from them', () => {
    const corners = cornersFrom([500, 2000], compassRule(legs))
    expectNear(
      corners.flat(),
      [323.614, 1561.426, 526.996, 1488.321, 719.336, 1686.956, 500, 2000],
      0.001,
    )
    expect(areaOf(corners)).toBeCloseTo(102_935.7, 0)
  })
})

describe('B2: five courses by the compass rule [Purdue ASM 215, after Wolf]', () => {
  const legs = traverse(
    '285.10 N26-10E | 610.45 S75-25E | 720.48 S15-30W | 203.00 N1-42W | 647.02 N53-06W',
  )

  test('latitudes and departures as printed', () => {
    expectNear(norths(legs), [255.88, -153.7, -694.28, 202.91, 388.48], 0.006)
    expectNear(easts(legs), [125.72, 590.78, -192.54, -6.02, -517.41], 0.006)
  })

  test('unrounded sums give 0.8833, 1:2792 (print, from rounded ones: 0.89, 1:2771)', () => {
    const miss = misclosureOf(legs)
    expectNear([miss.north, miss.east, miss.length], [-0.7043, 0.5331, 0.8833], 0.0001)
    expect(miss.ratio).toBe(2792)
  })

  test('balanced as printed, within 0.011: the print rounds corrections and nudges two', () => {
    const balanced = compassRule(legs)
    expectNear(norths(balanced), [255.96, -153.52, -694.07, 202.97, 388.66], 0.011)
    expectNear(easts(balanced), [125.66, 590.65, -192.69, -6.07, -517.55], 0.011)
    const corners = cornersFrom([10_000, 10_000], balanced).slice(0, 4)
    expectNear(
      corners.flat(),
      [10255.96, 10125.66, 10102.44, 10716.31, 9408.37, 10523.62, 9611.34, 10517.55],
      0.011,
    )
  })
})

describe('B3: six courses by both rules [lecture notes Transit Rule, Sample Traverse Computations]', () => {
  const legs = traverse(
    '495.85 5-30 | 850.62 46-02 | 855.45 112-22 | 1020.87 167-35 | 1117.26 263-44 | 660.08 304-51',
  )

  test('latitudes, departures and misclosure as printed', () => {
    expectNear(
      norths(legs),
      [493.5672, 590.5342, -325.5265, -996.9916, -121.9557, 377.1895],
      0.0001,
    )
    expectNear(easts(legs), [47.5251, 612.2285, 791.0924, 219.5069, -1110.584, -541.6952], 0.0001)
    const miss = misclosureOf(legs)
    expectNear([miss.north, miss.east, miss.length], [16.8171, 18.0737, 24.6876], 0.0001)
  })

  test('compass rule as printed, with the area', () => {
    const adjusted = compassRule(legs)
    expectNear(
      norths(adjusted),
      [491.8995, 587.6733, -328.4036, -1000.4252, -125.7134, 374.9694],
      0.0001,
    )
    expectNear(
      easts(adjusted),
      [45.7328, 609.1538, 788.0003, 215.8168, -1114.6225, -544.0812],
      0.0001,
    )
    expect(Math.abs(areaOf(cornersFrom([0, 0], adjusted)) - 1_715_250.0494)).toBeLessThan(0.001)
  })

  test('transit rule corrections [computed]', () => {
    const adjusted = transitRule(legs)
    const by = (i: number) => [
      adjusted[i]!.north - legs[i]!.north,
      adjusted[i]!.east - legs[i]!.east,
    ]
    const corrections = legs.map((_, i) => by(i))
    expectNear(
      corrections.map(([n]) => n!),
      [-2.8565, -3.4177, -1.884, -5.7701, -0.7058, -2.183],
      0.0001,
    )
    expectNear(
      corrections.map(([, e]) => e!),
      [-0.2585, -3.3303, -4.3032, -1.194, -6.0411, -2.9466],
      0.0001,
    )
  })
})

test('B4: transit rule from components [ques10.com problem 31405; truncated print: within 0.0002]', () => {
  const lat = [-173.2, -314.5, 86.6, 250, 154.9]
  const dep = [100, 128.4, 50, 0, -280]
  const legs = lat.map((north, i) => ({ north, east: dep[i]!, length: Math.hypot(north, dep[i]!) }))
  const corrected = transitRule(legs)
  // The print carries -173.87 to two decimals only.
  expectNear(norths(corrected).slice(1), [-315.7204, 86.264, 249.0299, 154.2989], 0.0002)
  expectNear(norths(corrected).slice(0, 1), [-173.87], 0.005)
  expectNear(easts(corrected), [100.2865, 128.7679, 50.1432, 0, -279.1978], 0.0002)
})

describe('B5: five courses by the compass rule [Ghilani and Wolf, ch. 10, inputs as quoted]', () => {
  const legs = traverse(
    '647.25 126-55-17 | 203.03 178-18-58 | 720.35 15-31-54 | 610.24 284-35-20 | 285.13 206-09-41',
  )

  test('sums and misclosure [computed]; the book rounds to 0.08 and 1:30 000 [from memory]', () => {
    const miss = misclosureOf(legs)
    expectNear([miss.east, miss.north, miss.length], [0.0268, 0.0754, 0.08], 0.0001)
    expect(Math.round(miss.ratio! / 1000)).toBeGreaterThanOrEqual(30)
    expect(Math.round(miss.ratio! / 1000)).toBeLessThanOrEqual(31)
  })

  test('adjusted departures, latitudes and the area [computed]', () => {
    const adjusted = compassRule(legs)
    expectNear(easts(adjusted), [517.444, 5.964, 192.881, -590.571, -125.717], 0.0006)
    expectNear(norths(adjusted), [-388.835, -202.949, 694.023, 153.69, -255.929], 0.0006)
    expect(Math.abs(areaOf(cornersFrom([0, 0], adjusted)) - 272_585)).toBeLessThan(1)
  })
})

test('B6: five-sided area [computed from Mahun’s corners; print, from rounded products, 140 494]', () => {
  const corners = [
    [406.31, 1259.97],
    [235.12, 1489.47],
    [65.81, 1126.4],
    [317.89, 942.04],
    [675.32, 1282.54],
  ] as const
  expect(areaOf(corners)).toBeCloseTo(140_493.107, 3)
})

describe('R1: a right-angled room [computed]', () => {
  const legs: Course[] = [
    { east: 240.125, north: 0, length: 240.125 },
    { east: 0, north: 144, length: 144 },
    { east: -239.875, north: 0, length: 239.875 },
    { east: 0, north: -144.25, length: 144.25 },
  ]

  test('misclosure +1/4 east, −1/4 north, 1:2173', () => {
    const miss = misclosureOf(legs)
    expect([miss.east, miss.north, miss.perimeter]).toEqual([0.25, -0.25, 768.25])
    expect(miss.length).toBeCloseTo(0.353553, 6)
    expect(miss.ratio).toBe(2173)
  })

  test('the compass rule skews its corners', () => {
    const corners = cornersFrom([0, 0], compassRule(legs)).map(([n, e]) => [e, n])
    expectNear(corners[0]!, [240.04686, 0.07814], 0.00001)
    expectNear(corners[1]!, [240.0, 144.125], 0.0001)
    expectNear(corners[2]!, [0.04694, 144.20306], 0.00001)
  })

  test('the transit rule keeps it square: 239.999935 by 144.124892', () => {
    const adjusted = transitRule(legs)
    expectNear([adjusted[0]!.east, adjusted[1]!.north], [239.999935, 144.124892], 0.0000006)
    expect([adjusted[0]!.north, adjusted[1]!.east]).toEqual([0, 0])
  })

  test('walls that keep their way give the transit rule, walls that do not the compass rule', () => {
    const close = (a: readonly Course[], b: readonly Course[]) => {
      expectNear(easts(a), easts(b), 1e-9)
      expectNear(norths(a), norths(b), 1e-9)
    }
    close(
      spreadMisclosure(legs, () => true),
      transitRule(legs),
    )
    close(
      spreadMisclosure(legs, () => false),
      compassRule(legs),
    )
  })
})

test('a traverse that closes exactly has no ratio', () => {
  const square = traverse('10 0 | 10 90 | 10 180 | 10 270')
  expect(misclosureOf(square)).toEqual({ east: 0, north: 0, length: 0, perimeter: 40, ratio: null })
})
