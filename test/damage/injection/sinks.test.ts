import { describe, expect, test } from 'vitest'
import { coloursFor } from '../../../server/src/cli/colours.ts'
import { drawingOf } from '../../../server/src/cli/drawing.ts'
import { messageLines } from '../../../server/src/cli/message-lines.ts'
import { checkJson } from '../../../server/src/report/json/check.ts'
import { estimateJson } from '../../../server/src/report/json/estimate.ts'
import { layoutJson } from '../../../server/src/report/json/layout.ts'
import { estimateText } from '../../../server/src/report/text/estimate.ts'
import { layoutText } from '../../../server/src/report/text/layout.ts'
import { effort } from '../../effort.ts'
import { compiled, JOB as LARGE } from '../job.ts'
import { readXml } from './xml.ts'

/** A closet of a room, for the words are what matters. */
const JOB = LARGE.replaceAll("12'", "5'").replaceAll("9'", "3'")

/** What a name, a note or a path may hold, and what somebody might make of it. */
const HOSTILE: readonly (readonly [what: string, text: string])[] = [
  ['markup', '<b>bold</b>'],
  ['a script', '<script>alert(1)</script>'],
  ['an end of the title', '</title></svg><script>alert(1)</script>'],
  ['an attribute', "' onload='alert(1)"],
  ['an end of data', ']]><!-- x --><![CDATA['],
  ['an entity', '&xxe; &#60; &lt;'],
  ['a script address', 'javascript:alert(1)'],
  ['a command link', '[press](command:workbench.action.quit)'],
  ['a formula', '=HYPERLINK(1)'],
  ['a formula by plus', 'plus +1+1'],
  ['a formula by at', '@SUM(1)'],
  ['a formula by minus', '-1+1'],
  ['a full-width formula', '＝1+1'],
  ['a template', `$\{process.exit()}`],
  ['a format', '%s%n%x'],
  ['a PDF operator', ') Tj ET BT (x'],
  ['a path', '..\\..\\x'],
  ['right to left', 'שינה 2'],
  ['__proto__', '__proto__'],
  ['constructor', 'constructor'],
  ['then', 'then'],
  ['toString', 'toString'],
  ['hasOwnProperty', 'hasOwnProperty'],
  ['a number as a key', 'x 10'],
]

/** Signs that no name keeps: what is printed of them anywhere is their number. */
const UNPRINTABLE: readonly (readonly [what: string, text: string])[] = [
  ['an escape sequence', '\u001b[31mred'],
  ['a bell', 'ding\u0007'],
  ['a bidi override', 'x\u202egnp.exe'],
  ['a line end of another kind', 'one\u2028two'],
  ['NUL', 'a\u0000b'],
]

/** Every place where a person puts words of their own, and an error message that repeats them. */
const PLACES: readonly (readonly [where: string, put: (text: string) => string])[] = [
  ['a room', (text) => JOB.replaceAll('bedroom', quoted(text))],
  ['a product', (text) => JOB.replaceAll('river larch', quoted(text))],
  ['a floor', (text) => JOB.replace('floor upstairs', `floor ${quoted(text)}`)],
  ['the job', (text) => JOB.replace('Heron Cottage', text)],
  ['the site', (text) => JOB.replace('job Heron Cottage\n', `job Heron Cottage\n  site ${text}\n`)],
  ['a note', (text) => JOB.replace('  gap ', `  note ${text}\n  gap `)],
  ['a tag', (text) => JOB.replace('  gap ', `  tag ${text}\n  gap `)],
  [
    'a wall',
    (text) =>
      JOB.replace("north       5'", `north       5', called ${quoted(text)}`).replace(
        'along north',
        `along ${quoted(text)}`,
      ),
  ],
  [
    'an opening',
    (text) =>
      JOB.replace(
        "east        3'",
        `east        3'\n    door 30", 3" from left, to outside, called ${quoted(text)}`,
      ),
  ],
  ['a hold', (text) => JOB.replace('  gap ', `  hold ${quoted(text)}\n  gap `)],
  [
    'an unknown room',
    (text) => JOB.replace('rooms       bedroom', `rooms       bedroom, ${quoted(text)}`),
  ],
  ['a word that is none', (text) => JOB.replace('  gap ', `  x${text}\n  gap `)],
  ['a phrase that is none', (text) => JOB.replace("north       5'", `north       5', x${text}`)],
  [
    'an include',
    (text) => JOB.replace('units feet-inches\n', `units feet-inches\ninclude ${text}.floor\n`),
  ],
  [
    'a title of a file line',
    (text) => JOB.replace('units feet-inches\n', `units feet-inches\n${text}\n`),
  ],
]

function quoted(text: string): string {
  return `"${text}"`
}

const PLAIN = coloursFor('never', false, { env: {} })
const plainDrawing = readXml(drawingOf(compiled(JOB)))

/** What every way of printing gives for a job. */
function printed(text: string) {
  const result = compiled(text)
  const job = { compiled: result, pathOf: (file: string) => file }
  return {
    texts: [
      estimateText(result),
      layoutText(result),
      ...result.messages.map((one) => messageLines(one, job, PLAIN)),
    ],
    json: [estimateJson(result), layoutJson(result), checkJson(result)],
    drawing: drawingOf(result),
  }
}

/** Control characters, line ends of other kinds, and what turns the text or shows nothing. */
const NEVER = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u

/** Each place is tried with every so many of them, so that all come up somewhere; the full share tries all. */
const EVERY = effort(5, 1)

describe('text, and nothing else, in every output', () => {
  test.each(PLACES)('in %s', (where, put) => {
    const first = PLACES.findIndex(([name]) => name === where)
    const tried = [...HOSTILE, ...UNPRINTABLE].filter((_, i) => (i + first) % EVERY === 0)
    for (const [, text] of tried) {
      const { texts, json, drawing } = printed(put(text))
      for (const one of texts) expect(one.replaceAll('\n', ''), text).not.toMatch(NEVER)
      for (const one of json) expect(() => JSON.parse(one), text).not.toThrow()
      const { elements, attributes, values } = readXml(drawing)
      const active = /script|foreign|image|use|animate|^a$/i
      expect([...elements].filter((name) => active.test(name))).toEqual([])
      expect([...attributes].filter((name) => /^on|href/i.test(name))).toEqual([])
      for (const value of values) expect(value.replaceAll('\n', ''), text).not.toMatch(NEVER)
    }
  })
})

describe('names that a program might stumble over', () => {
  test.each(HOSTILE)('%s names a room like any other', (_, text) => {
    const plain = compiled(JOB)
    const result = compiled(JOB.replaceAll('bedroom', quoted(text)))
    const counts = ({ takeoff }: typeof plain) =>
      takeoff.products.flatMap(({ quantities }) => quantities.map((one) => one.printed))
    expect(counts(result)).toEqual(counts(plain))
    const told = JSON.parse(estimateJson(result)) as { survey: { rooms: { name: string }[] } }
    expect(JSON.stringify(told)).toContain(JSON.stringify(text).slice(1, -1))
  })

  test('a name stands in the drawing as it was typed', () => {
    for (const [, text] of HOSTILE) {
      const { values } = readXml(drawingOf(compiled(JOB.replaceAll('bedroom', quoted(text)))))
      expect(values.join(' ').replaceAll(' ', ''), text).toContain(text.replaceAll(' ', ''))
    }
    expect(plainDrawing.values.join(' ')).toContain('bedroom')
  })

  test('our own negative numbers stay numbers', () => {
    const result = compiled(JOB)
    const numbers = (value: unknown): number[] =>
      typeof value === 'number'
        ? [value]
        : typeof value === 'object' && value !== null
          ? Object.values(value).flatMap(numbers)
          : []
    const found = [estimateJson(result), layoutJson(result)].flatMap((one) =>
      numbers(JSON.parse(one)),
    )
    expect(found.some((value) => value < 0)).toBe(true)
    expect(found.every(Number.isFinite)).toBe(true)
    expect(found.some((value) => Object.is(value, -0))).toBe(false)
  })
})
