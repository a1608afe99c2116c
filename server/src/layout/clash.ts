import { NM_PER_INCH, type Nm } from '../units/length.ts'
import type { Jointing } from './jointing.ts'
import { firstAbove } from './overlap-finder.ts'
import type { PlankRules } from './problem.ts'
import type { Touch } from './stretches.ts'

/** Two aligned joints are no breach but no layout: this outweighs any number of breaches. */
export const ALIGNED = 1_000_000

/** Joints nearer than this look as if they stood in one line (common practice, no source). */
export const IN_LINE: Nm = NM_PER_INCH / 2

/**
 * Breaches of the stagger between two stretches that meet along `touch`: pairs of joints that both
 * reach the seam strictly inside it, nearer than the stagger. Aligned ones count as `ALIGNED` each,
 * at the ends of the seam too. Joints of one length that keep off by their phase cost one comparison.
 */
export function clashes(a: Jointing, b: Jointing, touch: Touch, rules: PlankRules): number {
  if (a.joints.length === 0 || b.joints.length === 0) return 0
  const stagger = Math.max(rules.stagger, 1)
  if (a.phase >= 0 && b.phase >= 0) {
    if (offPhase(a.phase - b.phase, rules.lengths[0]!.length) >= stagger) return 0
  }
  let count = 0
  let near = firstAbove(b.joints, touch.from - stagger)
  for (let j = firstAbove(a.joints, touch.from - 1); j < a.joints.length; j += 1) {
    const u = a.joints[j]!
    if (u > touch.to) break
    while (near < b.joints.length && b.joints[near]! <= u - stagger) near += 1
    for (let i = near; i < b.joints.length && b.joints[i]! < u + stagger; i += 1) {
      count += clash(u, b.joints[i]!, touch)
    }
  }
  return count
}

function clash(u: Nm, other: Nm, touch: Touch): number {
  if (u === other) return ALIGNED
  const low = Math.min(u, other)
  const high = Math.max(u, other)
  return touch.from < low && high < touch.to ? 1 : 0
}

/** How far apart two phases lie, either way round. */
export function offPhase(difference: Nm, period: Nm): Nm {
  const off = Math.abs(difference) % period
  return Math.min(off, period - off)
}

/** Whether `c` two courses on stands in line with `a` (an H), or goes on in the step of a to `b`. */
export function repeatsPhase(a: Jointing, b: Jointing, c: Jointing, period: Nm): boolean {
  if (a.phase < 0 || c.phase < 0) return false
  if (offPhase(a.phase - c.phase, period) < IN_LINE) return true
  return b.phase >= 0 && offPhase(a.phase + c.phase - 2 * b.phase, period) < IN_LINE
}

/** Joints of `a` that `c`, two courses on, has in line with them: an H. */
export function inLine(a: Jointing, c: Jointing): number {
  let count = 0
  for (const u of a.joints) if (has(c, u)) count += 1
  return count
}

/** Further joints of `a` that `c`, two courses on, repeats in a constant step through `b` between them. */
export function steps(a: Jointing, b: Jointing, c: Jointing, longest: Nm): number {
  if (b.joints.length === 0) return 0
  const last = b.joints.at(-1)! + longest / 2
  let count = 0
  let i = firstAbove(a.joints, b.joints[0]! - longest / 2 - 1)
  for (; i < a.joints.length && a.joints[i]! <= last; i += 1) {
    const u = a.joints[i]!
    if (!has(c, u) && stepsOn(u, b, c, longest)) count += 1
  }
  return count
}

/** Whether some joint of `b` no more than half a plank off makes a step from u that `c` goes on in. */
function stepsOn(u: Nm, { joints }: Jointing, c: Jointing, longest: Nm): boolean {
  for (let i = firstAbove(joints, u - longest / 2 - 1); i < joints.length; i += 1) {
    const v = joints[i]!
    if (v - u > longest / 2) return false
    if (Math.abs(v - u) <= longest / 2 && has(c, 2 * v - u)) return true
  }
  return false
}

function has({ joints }: Jointing, u: Nm): boolean {
  const next = joints[firstAbove(joints, u - IN_LINE)]
  return next !== undefined && next - u < IN_LINE
}
