import type { UnitStyle } from '../units/length.ts'
import { samplesIn } from '../units/samples.ts'

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
])

/** A form as a person who writes in these units would: `2' 0" from left or right`. Names stay in capitals. */
export function exampleOf(form: string, style: UnitStyle = 'feet-inches'): string {
  if (/\|[^| ]+ /.test(form) && !/[A-Z]/.test(form)) return either(form)
  const example = form
    .split(' ')
    .map((word) => SAMPLES.get(word) ?? either(word))
    .join(' ')
  return samplesIn(example, style)
}

/** The example of a form on the line of one word: the version of the language is the one that there is. */
export function exampleOn(word: string, form: string, style: UnitStyle): string {
  return word === 'floorscribe' ? '1' : exampleOf(form, style)
}

/** `a|b|c` as it is said: a, b or c. */
function either(choice: string): string {
  const options = choice.split('|')
  if (options.length === 1) return choice
  return `${options.slice(0, -1).join(', ')} or ${options[options.length - 1]}`
}
