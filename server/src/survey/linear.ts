/**
 * Solves the square system m · x = right by elimination with row exchange; null where it is singular
 * to within a billionth of its largest entry. Takes n³/3 multiplications.
 */
export function solve(
  m: readonly (readonly number[])[],
  right: readonly number[],
): number[] | null {
  const rows = m.map((row, i) => [...row, right[i]!])
  const n = rows.length
  const least =
    1e-9 * rows.reduce((most, row) => Math.max(most, ...row.slice(0, n).map(Math.abs)), 0)
  for (let k = 0; k < n; k++) {
    const pivot = largestBelow(rows, k)
    if (Math.abs(rows[pivot]![k]!) <= least) return null
    const row = rows[pivot]!
    rows[pivot] = rows[k]!
    rows[k] = row
    for (let i = k + 1; i < n; i++) subtractRow(rows[i]!, row, k)
  }
  return substituteBack(rows)
}

function largestBelow(rows: readonly number[][], k: number): number {
  let best = k
  for (let i = k + 1; i < rows.length; i++) {
    if (Math.abs(rows[i]![k]!) > Math.abs(rows[best]![k]!)) best = i
  }
  return best
}

function subtractRow(row: number[], pivot: readonly number[], k: number): void {
  const factor = row[k]! / pivot[k]!
  if (factor === 0) return
  for (let j = k; j < row.length; j++) row[j] = row[j]! - factor * pivot[j]!
}

function substituteBack(rows: readonly (readonly number[])[]): number[] {
  const n = rows.length
  const x: number[] = new Array(n).fill(0)
  for (let i = n - 1; i >= 0; i--) {
    let rest = rows[i]![n]!
    for (let j = i + 1; j < n; j++) rest -= rows[i]![j]! * x[j]!
    x[i] = rest / rows[i]![i]!
  }
  return x
}

export function transpose(m: readonly (readonly number[])[]): number[][] {
  return m.map((_, i) => m.map((row) => row[i]!))
}

/**
 * Keeps the rows that say something new: of each row, what the kept ones do not already say must be
 * more than `least` of its length. Modified Gram–Schmidt; returns the kept indices, at most `most`.
 */
export function independentRows(
  rows: readonly (readonly number[])[],
  most: number,
  least: number,
): readonly number[] {
  const basis: number[][] = []
  const kept: number[] = []
  rows.forEach((row, index) => {
    if (kept.length === most) return
    const rest = [...row]
    for (const unit of basis) addTo(rest, unit, -product(rest, unit))
    const size = Math.sqrt(product(rest, rest))
    if (size <= least * Math.sqrt(product(row, row))) return
    kept.push(index)
    basis.push(rest.map((value) => value / size))
  })
  return kept
}

const product = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0)

function addTo(row: number[], unit: readonly number[], factor: number): void {
  for (let i = 0; i < row.length; i++) row[i] = row[i]! + factor * unit[i]!
}
