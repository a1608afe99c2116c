import { describe, expect, test } from 'vitest'
import { h, markup } from '../../server/src/report/svg/element.ts'
import { millionths, mm } from '../../server/src/report/svg/number.ts'
import { visible } from '../../server/src/report/visible.ts'

describe('an element', () => {
  test('takes text as text, in children and in attributes', () => {
    const hostile = `</title><script>alert(1)</script>&"'`
    expect(markup(h('title', {}, hostile))).toBe(
      '<title>&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;&#39;</title>',
    )
    expect(markup(h('path', { id: hostile }))).not.toMatch(/<script|id="[^"]*"[^/]/)
  })

  test('leaves out an attribute that is null, and adds no blanks to text', () => {
    expect(markup(h('text', { x: '1', fill: null }, 'a', h('tspan', {}, 'b')))).toBe(
      '<text x="1">a<tspan>b</tspan></text>',
    )
  })
})

describe('what no eye can see', () => {
  test.each([
    ['bunk\u202eroom', 'bunk‹U+202E›room'],
    ['a\u200bb', 'a‹U+200B›b'],
    ['a\u001b[31mb', 'a‹U+001B›[31mb'],
    ['a\nb', 'a‹U+000A›b'],
    ['half \ud83d', 'half ‹U+D83D›'],
    ['tag\u{e0041}', 'tag‹U+E0041›'],
  ])('is spelt out: %j', (text, shown) => {
    expect(visible(text)).toBe(shown)
  })

  test.each(['kids’ room', 'שינה', 'غرفة', '寝室', '🏠', '½″'])('but %s stays as it is', (text) => {
    expect(visible(text)).toBe(text)
  })
})

describe('a length in the drawing', () => {
  test.each([
    [0, '0'],
    [-1, '0'],
    [4_999, '0'],
    [5_000, '0.01'],
    [-5_000, '-0.01'],
    [396_875, '0.4'],
    [1_005_000, '1.01'],
    [25_400_000, '25.4'],
    [-3_175_000, '-3.18'],
    [9_144_000_000, '9144'],
  ])('%d nm is %s mm', (nm, text) => {
    expect(mm(nm)).toBe(text)
  })

  test('a turn has no more digits than it needs', () => {
    expect([1_000_000, 0, -707_107, 500_000].map(millionths)).toEqual([
      '1',
      '0',
      '-0.707107',
      '0.5',
    ])
  })
})
