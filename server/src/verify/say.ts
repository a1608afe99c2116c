import type { Vertex } from './layout.ts'

/** A length in millimetres, every digit of it: 12 700 000 → "12.7 mm". */
export function mm(nm: number): string {
  const whole = Math.trunc(Math.abs(nm) / 1_000_000)
  const rest = `${Math.abs(nm) % 1_000_000}`.padStart(6, '0').replace(/0{1,6}$/, '')
  return `${nm < 0 ? '-' : ''}${whole}${rest === '' ? '' : `.${rest}`} mm`
}

/** A place in the frame of the run: "12.7 mm along, 0 mm across". */
export function place(at: Vertex): string {
  return `${mm(at[0])} along, ${mm(at[1])} across`
}

/** "pieces 3, 4 and 5". */
export function listed(what: string, numbers: readonly number[]): string {
  if (numbers.length === 1) return `${what} ${numbers[0]}`
  return `${what}s ${numbers.slice(0, -1).join(', ')} and ${numbers[numbers.length - 1]}`
}
