import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'
import { HOME } from '../house/sources.ts'

const read = (path: string) => JSON.parse(readFileSync(join(HOME, path), 'utf8'))
const language = read('syntaxes/language-configuration.json')
const snippets: readonly Snippet[] = Object.values(read('syntaxes/snippets.json'))

interface Snippet {
  readonly prefix: string
  readonly body: readonly string[]
}

describe('typing', () => {
  test('no sign is closed or put around by itself: a foot mark is no quote', () => {
    expect([language.autoClosingPairs, language.surroundingPairs, language.brackets]).toEqual([
      [],
      [],
      [],
    ])
  })

  test.each([
    [`12'4-1/2"`, [`12'4-1/2"`]],
    [`12' 4½"`, [`12'`, '4½"']],
    ['12′ 4 1/2″', ['12′', '4', '1/2″']],
    ['3.76 m, ?', ['3.76', 'm', '?']],
    [`kids' room`, ['kids', 'room']],
    ['to north-west', ['to', 'north-west']],
    ['Søster’s værelse', ['Søster’s', 'værelse']],
  ])('a word of %s is what one would take hold of', (text, words) => {
    const { pattern, flags } = language.wordPattern
    expect(text.match(new RegExp(pattern, `g${flags}`))).toEqual(words)
  })

  test.each([
    ['room bunk room', 'indent'],
    ['floor upstairs', 'indent'],
    ['job Heron Cottage', undefined],
    ['  ', 'outdent'],
    ["  north       12'", undefined],
    ['units inches', undefined],
    ['# room', undefined],
  ])('after %j the next line goes in or out', (line, indent) => {
    const rule = language.onEnterRules.find((rule: { readonly beforeText: string }) =>
      new RegExp(rule.beforeText).test(line),
    )
    expect(rule?.action.indent).toBe(indent)
  })
})

describe('snippets', () => {
  test.each(snippets.map((one) => [one.prefix, one] as const))(
    '%s reads as it stands',
    (_, one) => {
      const texts = new Map([['job.floor', jobWith(one)]])
      const compiled = compile(texts, 'job.floor')
      const messages = 'missing' in compiled ? [] : compiled.messages
      expect(messages.filter(({ weight }) => weight === 'error')).toEqual([])
      expect(messages.length).toBeGreaterThan(0)
    },
  )
})

/** What stands in the text before any of it is filled in: first choices, and words as proposed. */
function plain({ body }: Snippet): string {
  return body
    .join('\n')
    .replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replaceAll('$0', '')
}

const ROOM = `room room 1
  north       12' 0"
  east        12' 0"
  south       12' 0"
  west        12' 0"
`
const UNDER = ['door', 'closet', 'diagonal']

function jobWith(snippet: Snippet): string {
  const head = 'floorscribe 1\njob A job\nunits feet-inches\n'
  const under = UNDER.includes(snippet.prefix)
  const hall = snippet.prefix === 'door' ? '\nroom hall\n' : ''
  const product = snippet.prefix === 'floor' ? `\n${plain(productSnippet())}` : ''
  return `${head}${under ? '' : `${plain(snippet)}\n`}${ROOM}${under ? `  ${plain(snippet)}\n` : ''}${hall}${product}`
}

function productSnippet(): Snippet {
  return snippets.find(({ prefix }) => prefix === 'product')!
}
