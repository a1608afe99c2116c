import { Resvg } from '@resvg/resvg-js'
import { describe, expect, test } from 'vitest'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { svg } from '../../server/src/report/svg.ts'
import { expectGolden } from '../golden.ts'
import { house } from './house.ts'
import { room } from './rooms.ts'

const GOLDEN = new URL('house.golden.svg', import.meta.url).pathname

describe('the drawing file', () => {
  const drawing = svg(sceneOf(house()))

  test('stands as accepted', () => {
    expectGolden(GOLDEN, drawing)
  })

  test('reads as a drawing, and shows something', () => {
    const picture = new Resvg(drawing, { fitTo: { mode: 'width', value: 400 } }).render()
    const ink = picture.pixels.filter((value, i) => i % 4 === 0 && value < 128).length
    expect(ink).toBeGreaterThan(500)
  })

  test('holds nothing that runs and nothing from elsewhere', () => {
    expect(drawing).not.toMatch(/<script|<style|<image|<foreignObject|javascript:|\son\w+=/i)
    const links = drawing.match(/(?:href|url|src)[^\s>]*/g) ?? []
    expect([...new Set(links)].every((link) => /^url\(#[a-z-]+\)/.test(link))).toBe(true)
    expect(drawing.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg'])
  })

  test('writes numbers with two decimals at most, and never minus nothing', () => {
    const paths = [
      ...drawing.matchAll(/ (?:d|x|y|cx|cy|r|font-size|stroke-width|viewBox)="([^"]*)"/g),
    ]
    expect(paths.length).toBeGreaterThan(500)
    for (const [, text] of paths) expect(text).not.toMatch(/\.\d{3}|e[+-]|NaN|Infinity|-0(?![.\d])/)
  })

  test('tells sawn pieces from whole ones by hatch, outline and ground', () => {
    const fill = (cut: string) =>
      new RegExp(`class="${cut}"[^>]*fill="([^"]*)"([^>]*)`).exec(drawing)!
    expect(fill('whole')[1]).toMatch(/^#/)
    expect(fill('whole')[2]).not.toContain('stroke')
    expect(fill('cut')[1]).toBe('url(#cut)')
    expect(fill('rip')[1]).toBe('url(#rip)')
    expect(fill('cut and rip')[1]).toBe('url(#cut-and-rip)')
    for (const cut of ['cut', 'rip', 'cut and rip']) expect(fill(cut)[2]).toContain('stroke-width')
  })
})

describe('a name that means harm', () => {
  const square = [
    [0, 100],
    [100, 100],
    [100, 0],
    [0, 0],
  ] as const
  const names = [
    '<script>alert(1)</script>',
    '"/><image href="x"/>',
    ']]>',
    '&#x6a;avascript:',
    '=cmd|x',
    '__proto__',
    'toString',
    'ro\u202eom',
    'bell\u0007',
    '\ud800',
  ]

  test.each(names)('%j is text and nothing else', (name) => {
    const subject = { ...house(), title: name, subtitles: [name], rooms: [room(name, square)] }
    const drawing = svg(sceneOf({ ...subject, floors: [], doorways: [] }))
    expect(() => new Resvg(drawing)).not.toThrow()
    expect(drawing).not.toMatch(/<script|<image/)
    expect(['\u202e', '\u0007'].filter((sign) => drawing.includes(sign))).toEqual([])
    expect(drawing.isWellFormed()).toBe(true)
    expect(drawing.match(/<svg/g)).toHaveLength(1)
  })
})
