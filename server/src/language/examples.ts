/** What stands for each capital of a form when a message shows how it is written. */
const SAMPLES: ReadonlyMap<string, string> = new Map([
  ['LENGTH', '2\' 0"'],
  ['SIZE', '7" x 48"'],
  ['NUMBER', '23.64'],
  ['COUNT', '9'],
  ['PERCENT', '10%'],
  ['ANGLE', '30°'],
  ['DATE', '2027-04-12'],
  ['WAY', 'east'],
  ['PATH', 'products.floor'],
  ['ROOM', 'ROOM'],
  ['WALL', 'WALL'],
])

/** A form as a person would write it: `2' 0" from left or right`. Names stay in capitals. */
export function exampleOf(form: string): string {
  return form
    .replace(/[A-Z]+/g, (capital) => SAMPLES.get(capital) ?? capital)
    .replace(/\|/g, ' or ')
}
