/** Whether a text holds all signs that are sought, in their order, whatever stands between them. */
export function holdsInOrder(text: string, sought: string): boolean {
  let at = 0
  for (const sign of sought) {
    at = text.indexOf(sign, at) + 1
    if (at === 0) return false
  }
  return true
}
