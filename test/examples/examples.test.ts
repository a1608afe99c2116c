import { execFileSync } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { verify } from '../../server/src/verify/verify.ts'
import { expectGolden } from '../golden.ts'
import { compileExample, EXAMPLE_JOBS } from './read-example.ts'

const PROGRAM = new URL('../../dist/floorscribe.mjs', import.meta.url).pathname
const EXAMPLES = new URL('../../examples/', import.meta.url).pathname

function floorscribe(...words: string[]): string {
  return execFileSync(process.execPath, [PROGRAM, ...words], { cwd: EXAMPLES, encoding: 'utf8' })
}

for (const job of EXAMPLE_JOBS) {
  const name = job.replace('.floor', '')

  test(`${name} is sound and complete, and its estimate stands as accepted`, () => {
    expect(
      compileExample(job).messages.filter((one) => one.weight !== 'note' && !one.accepted),
    ).toEqual([])
    expectGolden(join(EXAMPLES, 'expected', `${name}.txt`), floorscribe('estimate', job))
  })

  test(`${name}: its layout is proved again, and its cut list stands as accepted`, () => {
    const report = verify(JSON.parse(floorscribe('layout', '--format', 'json', job)))
    expect(report.faults).toEqual([])
    expect(report.sound).toBe(true)
    expectGolden(join(EXAMPLES, 'expected', `${name}.cut-list.txt`), floorscribe('layout', job))
  })

  test(`${name}: its drawing stands as accepted`, () => {
    const file = join(tmpdir(), `floorscribe-${process.pid}-${name}.svg`)
    floorscribe('estimate', '--drawing', file, job)
    const drawing = readFileSync(file, 'utf8')
    rmSync(file)
    expectGolden(join(EXAMPLES, 'expected', `${name}.svg`), drawing)
  })
}
