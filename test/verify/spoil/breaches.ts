import { type Spoiler, spoiler, to } from './spoiler.ts'

/** Falsified breaches. A rule made stricter after the fact makes every layout hide one. */
export const BREACH_SPOILERS: readonly Spoiler[] = [
  spoiler('hidden: stagger', 'hidden-breach', (floor) => {
    const seen = new Set(floor.joints.map(({ course }) => course))
    floor.breaches = floor.breaches.filter(({ rule }) => rule !== 'stagger')
    floor.rules.stagger = 10 * Math.max(...floor.planks.map(({ length }) => length))
    return seen.size > 1
  }),
  spoiler('hidden: shortest end', 'hidden-breach', (floor) => {
    floor.breaches = floor.breaches.filter(({ rule }) => rule !== 'shortest end')
    floor.rules.shortestEnd = Math.max(...floor.planks.map(({ length }) => length))
    return floor.pieces.some(({ factory }) => factory.left !== factory.right)
  }),
  spoiler('hidden: narrowest rip', 'hidden-breach', (floor) => {
    floor.breaches = floor.breaches.filter(({ rule }) => rule !== 'narrowest rip')
    floor.rules.narrowestRip = floor.rules.plankWidth + 1
    return true
  }),
  spoiler('hidden: longest run along', 'hidden-breach', (floor) => {
    floor.rules.longestRun.along = 1
    return !floor.breaches.some(({ direction }) => direction === 'along')
  }),
  spoiler('hidden: longest run across', 'hidden-breach', (floor) => {
    floor.rules.longestRun.across = 1
    return !floor.breaches.some(({ direction }) => direction === 'across')
  }),
  spoiler('hidden: doorway joint', 'hidden-breach', (floor) =>
    to(floor.joints[0], ({ at, low, high }) => {
      floor.doorways.push({ doorway: 'new door', from: at - 1, to: at + 1, low, high })
    }),
  ),
  spoiler('hidden: one left out', 'hidden-breach', (floor) => floor.breaches.pop() !== undefined),
  spoiler('invented', 'invented-breach', (floor) => {
    floor.breaches.push({
      rule: 'doorway joint',
      value: 1,
      limit: 0,
      at: [0, 0],
      pieces: [floor.pieces[0]!.piece],
      direction: '',
    })
    return true
  }),
  spoiler('value made milder', 'breach-misstated', (floor) =>
    to(floor.breaches[0], (breach) => {
      breach.value += 1
    }),
  ),
  spoiler('limit made milder', 'breach-misstated', (floor) =>
    to(floor.breaches[0], (breach) => {
      breach.limit -= 1
    }),
  ),
  spoiler('told of another place', 'breach-misstated', (floor) =>
    to(floor.breaches[0], (breach) => {
      breach.at[0] += 1
    }),
  ),
]
