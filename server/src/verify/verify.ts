import { checkAligned } from './aligned.ts'
import { checkApart } from './apart.ts'
import { checkBlanks } from './blanks.ts'
import { checkBound } from './bound.ts'
import { compareBreaches } from './breaches/compare.ts'
import { findBreaches } from './breaches/find.ts'
import { checkCourses } from './courses.ts'
import { checkDisjoint } from './disjoint.ts'
import { findOut } from './found.ts'
import { checkHand } from './hand.ts'
import { checkInnerEdges } from './inner-edges.ts'
import { checkJoints } from './joints.ts'
import { FILE, FLOOR, type Floor } from './layout.ts'
import { checkParted } from './parted.ts'
import { checkPile } from './pile.ts'
import { checkReferences } from './references.ts'
import { type Breach, type Finding, NOTHING_CHECKED, type Report } from './report.ts'
import { checkRings } from './rings.ts'
import { checkSpans } from './spans.ts'
import { checkTiling } from './tiling.ts'
import { checkTurned } from './turned.ts'
import { checkUnsplit } from './unsplit.ts'

/**
 * Proves a published layout again from its JSON alone. Everything is decided in whole numbers, without
 * tolerances, by code that shares nothing with the planner: what it finds sound is a tiling of the
 * area by parts of the planks listed, laid by the rules, with every breach of a soft rule told.
 * Takes any value and never throws: what cannot be read is a fault that says where.
 */
export function verify(json: unknown): Report {
  const wrong: string[] = []
  const file = FILE(json, '', wrong)
  if (file === undefined) return unreadable('', wrong)
  return file.floors.map(({ value }, i) => verifyFloor(value, i)).reduce(together, NOTHING)
}

const NOTHING: Report = { sound: true, faults: [], breaches: [], checked: NOTHING_CHECKED }

function unreadable(floor: string, wrong: readonly string[]): Report {
  const faults = wrong.map((text) => ({ code: 'not-readable', text, floor }))
  return { ...NOTHING, sound: false, faults }
}

function verifyFloor(value: unknown, index: number): Report {
  const wrong: string[] = []
  const floor = FLOOR(value, `floors[${index}]`, wrong)
  return floor === undefined ? unreadable('', wrong) : prove(floor)
}

/** First what all the rest leans on; where that fails, the rest would only add noise. */
function prove(floor: Floor): Report {
  const basics = [...checkReferences(floor), ...checkRings(floor)]
  if (basics.length > 0) return report(floor, basics, [], 0)
  const found = findOut(floor)
  const breaches = findBreaches(floor, found)
  const faults = [
    ...checkTiling(floor, found),
    ...checkDisjoint(floor),
    ...checkUnsplit(floor),
    ...checkCourses(floor, found),
    ...checkInnerEdges(found),
    ...checkSpans(floor, found),
    ...checkApart(floor),
    ...checkHand(floor, found),
    ...checkBlanks(floor, found),
    ...checkTurned(floor),
    ...checkJoints(floor, found),
    ...checkParted(floor, found),
    ...checkAligned(found),
    ...checkPile(floor, found),
    ...compareBreaches(floor.breaches, breaches),
    ...checkBound(floor),
  ]
  return report(floor, faults, breaches, found.joints.length)
}

function report(
  { floor, courses, pieces, planks }: Floor,
  faults: readonly Finding[],
  breaches: readonly Breach[],
  joints: number,
): Report {
  return {
    sound: faults.length === 0,
    faults: faults.map((fault) => ({ ...fault, floor })),
    breaches: breaches.map((breach) => ({ ...breach, floor })),
    checked: {
      floors: 1,
      courses: courses.length,
      pieces: pieces.length,
      joints,
      planks: planks.length,
    },
  }
}

function together(a: Report, b: Report): Report {
  return {
    sound: a.sound && b.sound,
    faults: [...a.faults, ...b.faults],
    breaches: [...a.breaches, ...b.breaches],
    checked: {
      floors: a.checked.floors + b.checked.floors,
      courses: a.checked.courses + b.checked.courses,
      pieces: a.checked.pieces + b.checked.pieces,
      joints: a.checked.joints + b.checked.joints,
      planks: a.checked.planks + b.checked.planks,
    },
  }
}
