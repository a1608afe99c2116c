import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { findBrowser } from './find-browser.ts'

test('the browser that CHROMIUM names is taken, and none in its place', () => {
  expect(findBrowser({ CHROMIUM: process.execPath })).toBe(process.execPath)
  expect(() => findBrowser({ CHROMIUM: '/nowhere/chromium' })).toThrow(
    'CHROMIUM names /nowhere/chromium, and there is no such file.',
  )
})

test('one is installed, or is installed now', () => {
  const version = execFileSync(findBrowser(), ['--version'], { encoding: 'utf8', stdio: 'pipe' })
  expect(version).toMatch(/Chrom|Edge/)
})
