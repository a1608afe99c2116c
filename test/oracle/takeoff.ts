import type { Job, Product } from './job.ts'
import type { Nm } from './lengths.ts'
import type { Side } from './patch.ts'
import { length, less } from './point.ts'
import { ceiling, minus, over, plus, type Ratio, ratio, round, times, total } from './ratio.ts'

/** Planks that a floor begins, by length. */
export type Used = ReadonlyMap<Nm, bigint>

/** The run of base or shoe in nanometres: each straight stretch rounded once. */
export function perimeterOf(edges: readonly Side[], room: string | null): Ratio {
  const along = edges.filter(({ trim }) => (room === null ? trim !== null : trim === room))
  return ratio(total(along.map(({ from, to }) => round(length(less(to, from))))))
}

/** Area of the planks used over the area that they cover, less one; as a percentage. */
export function wasteOf(used: Used, { width }: Product, covered: Ratio): Ratio {
  const area = ratio(total([...used].map(([long, count]) => long * count * width)))
  return times(minus(over(area, covered), ratio(1n)), ratio(100n))
}

/** Floor area and the allowance, over a plank; for several lengths over the mean of those used. */
export function byPercentage(
  { allowance }: Job,
  used: Used,
  { width }: Product,
  area: Ratio,
): bigint {
  const planks = total([...used.values()])
  const mean = ratio(total([...used].map(([long, count]) => long * count)) * width, planks)
  return ceiling(over(times(area, plus(ratio(1n), allowance)), mean))
}

export interface Order {
  readonly planks: bigint
  readonly spoil: bigint
  readonly spares: bigint
  readonly boxes: bigint
  readonly left: bigint
}

/** What is bought of a product, for all floors that it lies on. */
export function orderOf(used: readonly Used[], product: Product): Order {
  const { perBox, lengths, spoil, spares } = product
  const planks = total(used.flatMap((floor) => [...floor.values()]))
  const stated = spoil.planks + ceiling(times(ratio(planks), spoil.percent))
  const spoiled = stated < 2n ? 2n : stated
  const promised = spares.planks + spares.boxes * perBox
  const together = ceiling(ratio(planks + spoiled + promised, perBox))
  const byLength = lengths.map(({ length: long, perBox: inBox }) =>
    ceiling(ratio(total(used.map((floor) => floor.get(long) ?? 0n)), inBox)),
  )
  const boxes = [together, ...(lengths.length > 1 ? byLength : [])].reduce((a, b) =>
    b > a ? b : a,
  )
  return {
    planks,
    spoil: spoiled,
    spares: promised,
    boxes,
    left: boxes * perBox - planks - spoiled,
  }
}
