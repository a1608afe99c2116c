import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { expect } from 'vitest'

/**
 * Holds a text against the file that a person has read and accepted. UPDATE_GOLDEN=1 accepts the
 * text as it now is; a missing file fails, so that nothing is accepted by accident.
 */
export function expectGolden(path: string, text: string): void {
  if (process.env.UPDATE_GOLDEN === '1') accept(path, text)
  expect(existsSync(path), `${path} is missing; accept it with UPDATE_GOLDEN=1`).toBe(true)
  expect(text).toBe(readFileSync(path, 'utf8'))
}

function accept(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, text)
}
