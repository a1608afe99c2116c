import { type Line, turn } from './exact.ts'
import type { Point } from './point.ts'

/**
 * The boundary of a sum of regions that do not overlap: lines walked both ways lie inside and fall
 * away, unless `keeps` holds them; the rest is linked to closed rings, the floor on the left. Where
 * rings touch in a point the sharpest left turn is taken, so that no ring crosses itself.
 */
export function boundary<T extends Line>(
  lines: readonly T[],
  keeps: (line: T) => boolean = () => false,
): T[][] {
  const rest = withoutPairs(lines, keeps)
  const leaving = byStart(rest)
  const used = new Set<T>()
  const rings: T[][] = []
  for (const start of rest) {
    if (used.has(start)) continue
    const ring: T[] = []
    let line: T | undefined = start
    while (line && !used.has(line)) {
      used.add(line)
      ring.push(line)
      // The start is a choice too, or a ring begun where two touch would run on into the other.
      const choices: readonly T[] = leaving.get(keyOf(line.to)) ?? []
      line = leftmost(
        line,
        choices.filter((choice) => choice === start || !used.has(choice)),
      )
    }
    rings.push(ring)
  }
  return rings
}

function keyOf(point: Point): string {
  return `${point.x} ${point.y}`
}

function withoutPairs<T extends Line>(lines: readonly T[], keeps: (line: T) => boolean): T[] {
  const waiting = new Map<string, T[]>()
  const gone = new Set<T>()
  for (const line of lines) {
    if (keeps(line)) continue
    const opposite = waiting.get(`${keyOf(line.to)} ${keyOf(line.from)}`)?.pop()
    if (opposite) {
      gone.add(opposite)
      gone.add(line)
      continue
    }
    const key = `${keyOf(line.from)} ${keyOf(line.to)}`
    const same = waiting.get(key)
    if (same) same.push(line)
    else waiting.set(key, [line])
  }
  return lines.filter((line) => !gone.has(line))
}

function byStart<T extends Line>(lines: readonly T[]): Map<string, T[]> {
  const leaving = new Map<string, T[]>()
  for (const line of lines) {
    const key = keyOf(line.from)
    const there = leaving.get(key)
    if (there) there.push(line)
    else leaving.set(key, [line])
  }
  return leaving
}

function leftmost<T extends Line>(line: T, choices: readonly T[]): T | undefined {
  return choices.reduce<T | undefined>(
    (best, choice) => (best && !leftOf(line, choice, best) ? best : choice),
    undefined,
  )
}

/** Whether going on along `a` turns further to the left than along `b`. */
function leftOf(line: Line, a: Line, b: Line): boolean {
  const sideA = turn(line.from, line.to, a.to)
  const sideB = turn(line.from, line.to, b.to)
  if (sideA !== sideB) return sideA > sideB
  return turn(line.to, b.to, a.to) > 0
}
