import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'
import { format } from '../../server/src/language/format.ts'
import { parse } from '../../server/src/language/parse.ts'
import { HOME } from '../house/sources.ts'

const FOLDER = join(HOME, 'client/walkthrough')
const pages = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(join(FOLDER, name), 'utf8')])
const examples = pages.flatMap(([name, page]) =>
  [...page!.matchAll(/^```\n([\s\S]*?)^```$/gm)].map(([, text]) => [name!, text!] as const),
)
/** A page of the walkthrough is half as wide as an editor: longer lines are cut off. */
const WIDEST = 52

describe('the walkthrough', () => {
  test('begins with a job that is counted to its end, and includes nothing', () => {
    const text = readFileSync(join(FOLDER, 'example.floor'), 'utf8')
    const compiled = compile(new Map([['example.floor', text]]), 'example.floor')
    expect('missing' in compiled ? compiled : compiled.exit).toBe('sound')
    expect(format(parse('example.floor', text))).toBe(text)
  })

  test('shows text of the language', () => {
    expect(examples.length).toBeGreaterThan(3)
  })

  test.each(examples)('%s: its example reads as it stands', (_, text) => {
    expect(parse('job.floor', text).messages.filter(({ weight }) => weight === 'error')).toEqual([])
  })

  test.each(examples)('%s: no line of its example is cut off', (_, text) => {
    expect(text.split('\n').filter((line) => line.length > WIDEST)).toEqual([])
  })
})
