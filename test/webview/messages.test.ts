import { describe, expect, test } from 'vitest'
import { pageHtml } from '../../client/webview/html.ts'
import { asFromPage, asToPage } from '../../client/webview/messages.ts'
import { previewChange } from '../../server/src/features/preview-change.ts'
import { HOUSE } from '../features/house.ts'
import { previewOfText } from './pictures.ts'

const { picture } = previewOfText(`${HOUSE}room loft\n  north 9'\n`)
const whole = { type: 'preview', change: previewChange(null, picture) }

describe('what the page hears', () => {
  test.each([
    whole,
    { type: 'preview', change: previewChange(picture, picture) },
    { type: 'cursor', ids: ['a'] },
    { type: 'notice', text: '' },
  ])('$type', (message) => {
    expect(asToPage(JSON.parse(JSON.stringify(message)))).toEqual(message)
  })

  test.each([
    null,
    undefined,
    'preview',
    7,
    [],
    {},
    { type: 'nothing' },
    { type: '__proto__' },
    { type: 'toString' },
    { type: 'cursor' },
    { type: 'cursor', ids: 'a' },
    { type: 'cursor', ids: [1] },
    { type: 'notice', text: null },
    { type: 'preview' },
    { type: 'preview', change: { kind: 'whole' } },
    { type: 'preview', change: { kind: 'other' } },
    Object.create({ type: 'notice', text: 'inherited' }),
  ])('nothing else: %j', (message) => {
    expect(asToPage(message)).toBeNull()
  })

  test('no picture of which any part is missing or something else', () => {
    let tried = 0
    for (const path of placesIn(picture)) {
      const broken = structuredClone(whole)
      spoil(broken, ['change', 'picture', ...path])
      expect([path, asToPage(broken)]).toEqual([path, null])
      tried += 1
    }
    expect(tried).toBeGreaterThan(150)
  })

  test('no number that is none', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, '7']) {
      const broken = structuredClone(whole) as { change: { picture: { scene: { em: unknown } } } }
      broken.change.picture.scene.em = bad
      expect(asToPage(broken)).toBeNull()
    }
  })
})

/** Paths to every field of one shape of each kind, and of the rest of the picture. */
function placesIn(value: object): (readonly string[])[] {
  const seen = new Set<string>()
  const walk = (one: unknown, path: readonly string[]): (readonly string[])[] => {
    if (typeof one !== 'object' || one === null) return [path]
    return Object.entries(one).flatMap(([key, part]) => {
      const kind = typeof part === 'object' && part !== null && 'kind' in part ? part.kind : null
      if (kind !== null && seen.has(`${kind}`)) return []
      if (kind !== null) seen.add(`${kind}`)
      if (Array.isArray(one) && kind === null && Number(key) > 0) return []
      return walk(part, [...path, key])
    })
  }
  return walk(value, []).filter((path) => path.length > 0)
}

/** Puts something in the place that belongs in none. */
function spoil(value: object, path: readonly string[]): void {
  const [last, ...rest] = path.toReversed()
  let at: object = value
  for (const key of rest.toReversed()) at = Reflect.get(at, key) as object
  Reflect.set(at, last!, { odd: true })
}

describe('what the extension hears', () => {
  test.each([{ type: 'ready' }, { type: 'go to', id: 'den: wall 0' }, { type: 'export' }])(
    '$type',
    (message) => {
      expect(asFromPage(message)).toEqual(message)
    },
  )

  test.each([
    null,
    'ready',
    { type: 'go to' },
    { type: 'go to', id: 7 },
    { type: 'open', uri: 'file:///etc/passwd' },
    { command: 'ready' },
    { type: ['ready'] },
  ])('nothing else: %j', (message) => {
    expect(asFromPage(message)).toBeNull()
  })
})

describe("the page's own text", () => {
  const html = pageHtml({
    nonce: 'bm9uY2U',
    scriptUri: 'https://x/page.js',
    styleUri: 'https://x/p.css',
  })

  test('lets in one script and one style sheet by their nonce, and nothing else', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)![1]!
    const rules = policy.replaceAll('&#39;', "'").split('; ')
    expect(rules).toContain("default-src 'none'")
    expect(rules).toContain("base-uri 'none'")
    expect(rules).toContain("form-action 'none'")
    expect(rules.filter((rule) => !rule.endsWith("'none'"))).toEqual([
      "style-src 'nonce-bm9uY2U'",
      "script-src 'nonce-bm9uY2U'",
    ])
    expect(policy).not.toMatch(/unsafe|https?:|\*|data:/)
    expect(html.match(/<script/g)).toHaveLength(1)
    expect(html).not.toMatch(/<(base|form|iframe|img|object|style)|\son\w+=/)
  })

  test('keeps what it is given within its marks', () => {
    const odd = pageHtml({ nonce: '"><script>', scriptUri: '"><img>', styleUri: "'&<" })
    expect(odd).not.toMatch(/"><script>|<img/)
    expect(odd).toContain('src="&#34;&#62;&#60;img&#62;"')
  })
})
