/** Lengths here are whole sixteenths of an inch, as a tape is read. */
export const INCH = 16
export const FOOT = 12 * INCH

/** A length as it is called out: 2372 → `12' 4 1/4"`. */
export function taped(sixteenths: number): string {
  const feet = Math.floor(sixteenths / FOOT)
  const rest = sixteenths % FOOT
  const inches = Math.floor(rest / INCH)
  const fraction = fractionOf(rest % INCH)
  const marked = `${[inches > 0 || fraction === '' ? `${inches}` : '', fraction].filter(Boolean).join(' ')}"`
  return feet > 0 ? `${feet}' ${marked}` : marked
}

function fractionOf(sixteenths: number): string {
  if (sixteenths === 0) return ''
  let [over, under] = [sixteenths, INCH]
  while (over % 2 === 0) [over, under] = [over / 2, under / 2]
  return `${over}/${under}`
}

/** The straight distance between two points, read to the nearest sixteenth. */
export function distance(east: number, north: number): number {
  return Math.round(Math.sqrt(east * east + north * north))
}
