// Mutants of the folders named, of all without a name: `npm run mutants -- units takeoff`; of one file
// of a folder, for what takes long: `npm run mutants -- layout/stock.ts`.
import { readFile } from 'node:fs/promises'
import type { PartialStrykerOptions } from '@stryker-mutator/api/core'
import { Stryker } from '@stryker-mutator/core'
import { type Report, writeResults } from './results.ts'
import { FOLDERS } from './suites.ts'

const RUNNER = new URL('runner.ts', import.meta.url).href
const CACHE = '.cache/mutants'

function optionsFor(folder: string, files: string): PartialStrykerOptions {
  return {
    mutate: [`server/src/${folder}/${files}`],
    testRunner: 'in-process',
    plugins: [RUNNER],
    // The compiler has no interface for programs; Stryker would use it to rewrite the settings.
    tsconfigFile: 'none',
    packageManager: 'npm',
    ignorePatterns: ['dist', '.cache', 'coverage'],
    tempDirName: '.cache/stryker',
    incremental: true,
    incrementalFile: `${CACHE}/${folder}.json`,
    concurrency: 2,
    // The runner cuts off a test that does not end; this is for what it cannot cut off.
    timeoutMS: 120_000,
    timeoutFactor: 10,
    reporters: ['progress-append-only', 'json'],
    jsonReporter: { fileName: reportOf(folder) },
    allowConsoleColors: false,
  }
}

function reportOf(folder: string): string {
  return `${CACHE}/${folder}-report.json`
}

const asked = process.argv.slice(2)
for (const part of asked.length > 0 ? asked : FOLDERS) {
  const [folder, files = '*.ts'] = part.split('/') as [string, string?]
  process.env.FLOORSCRIBE_MUTANTS = folder
  await new Stryker(optionsFor(folder, files)).runMutationTest()
  const report = JSON.parse(await readFile(reportOf(folder), 'utf8')) as Report
  console.log(await writeResults(folder, report))
}
