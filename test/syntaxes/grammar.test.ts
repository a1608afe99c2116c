import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { grammar } from '../../client/build/grammar.ts'
import { WORDS, type Word } from '../../server/src/language/words.ts'
import { HOME } from '../house/sources.ts'

const FILE = join(HOME, 'syntaxes/floor.tmLanguage.json')
const TESTER = join(HOME, 'node_modules/vscode-tmgrammar-test/dist/unit.js')
const SOUND = 'run successfuly'

/** What the tester says of a text with marks under its lines. */
function colours(file: string): string {
  try {
    return execFileSync(process.execPath, [TESTER, '-g', FILE, file], { encoding: 'utf8' })
  } catch (error) {
    return (error as { readonly stdout: string }).stdout
  }
}

describe('the grammar that colours a text before it is read', () => {
  test('is the one that the vocabulary gives: run "node client/build/grammar.ts"', () => {
    const made = JSON.parse(JSON.stringify(grammar()))
    expect(JSON.parse(readFileSync(FILE, 'utf8'))).toEqual(made)
  })

  test('colours words, names, readings, doubts and remarks as marked', () => {
    expect(colours(join(HOME, 'test/syntaxes/words.floor'))).toContain(SOUND)
  })

  test('knows every first word of the language, where it stands', () => {
    expect(colourOfLines(WORDS.map(marked))).toContain(SOUND)
  })

  test('leaves alone what is no first word', () => {
    expect(colourOfLines(["  esat 4'\n# ^^^^ keyword.control.line.floor"])).toContain('failed')
  })
})

function marked({ word, home, opens }: Word): string {
  const scope = opens === undefined ? 'keyword.control.line.floor' : 'keyword.control.block.floor'
  return home === 'file'
    ? `${word} x\n# <${'-'.repeat(word.length)} ${scope}`
    : `  ${word} x\n# ${'^'.repeat(word.length)} ${scope}`
}

function colourOfLines(lines: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'floorscribe-colours-'))
  try {
    const file = join(folder, 'lines.floor')
    writeFileSync(file, ['# SYNTAX TEST "source.floor" "lines"', ...lines, ''].join('\n'))
    return colours(file)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
