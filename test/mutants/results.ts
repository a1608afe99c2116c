import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'

/** What is used of Stryker's report. */
export interface Report {
  readonly files: Readonly<Record<string, { source: string; mutants: readonly Mutant[] }>>
}

interface Mutant {
  readonly status: string
  readonly replacement: string
  readonly location: { readonly start: Position; readonly end: Position }
}

interface Position {
  readonly line: number
  readonly column: number
}

const RESULTS = new URL('RESULTS.md', import.meta.url)
const survivorsOf = (folder: string) => new URL(`survivors/${folder}.md`, import.meta.url)

/** Writes a folder's row and its list of survivors; gives the row. */
export async function writeResults(folder: string, report: Report): Promise<string> {
  const row = rowOf(folder, report)
  const lines = (await readFile(RESULTS, 'utf8')).split('\n')
  const at = lines.findIndex((line) => line.startsWith(`| ${folder} `))
  await writeFile(RESULTS, lines.with(at, row).join('\n'))
  const list = survivorsOf(folder)
  const reasons = reasonsIn(existsSync(list) ? await readFile(list, 'utf8') : '')
  await writeFile(list, survivorsIn(folder, report, reasons))
  return row
}

/** Killed counts what a test noticed; a mutant that runs on without an end is noticed too. */
function rowOf(folder: string, { files }: Report): string {
  const statuses = Object.values(files).flatMap(({ mutants }) => mutants.map((one) => one.status))
  const [killed, slow, survived, unreached] = ['Killed', 'Timeout', 'Survived', 'NoCoverage'].map(
    (status) => statuses.filter((one) => one === status).length,
  ) as [number, number, number, number]
  const all = killed + slow + survived + unreached
  const score = `${((100 * (killed + slow)) / all).toFixed(1)} %`
  return `| ${[folder, all, killed, slow, survived, unreached, score, commit()].join(' | ')} |`
}

function commit(): string {
  return execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim()
}

/** A reason stands under its line of source, and goes with the line when that moves. */
function reasonsIn(list: string): ReadonlyMap<string, string> {
  const blocks = [...list.matchAll(/^### (.+)\n\n(?:- .*\n)+\n(.+)$/gm)]
  return new Map(blocks.map(([, line, reason]) => [line!, reason!]))
}

function survivorsIn(
  folder: string,
  { files }: Report,
  reasons: ReadonlyMap<string, string>,
): string {
  const parts = [`# Survivors in ${folder}\n`]
  for (const [path, { source, mutants }] of Object.entries(files)) {
    const lines = source.split('\n')
    const left = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    const byLine = Map.groupBy(left, ({ location }) => location.start.line)
    if (byLine.size > 0) parts.push(`## ${path.replace(/.*\//, '')}\n`)
    for (const [line, some] of [...byLine].sort(([one], [other]) => one - other)) {
      const title = `\`${lines[line - 1]!.trim()}\``
      const changes = some.map((mutant) => `- ${changeOf(lines, mutant)}\n`).join('')
      parts.push(`### ${title}\n\n${changes}\n${reasons.get(title) ?? NOT_YET}\n`)
    }
  }
  return parts.join('\n')
}

const NOT_YET = 'Not looked at yet.'

function changeOf(lines: readonly string[], { location, replacement }: Mutant): string {
  const { start, end } = location
  const last = start.line === end.line ? end.column : undefined
  const was = lines[start.line - 1]!.slice(start.column - 1, last && last - 1)
  return `\`${was}${last === undefined ? ' …' : ''}\` → \`${replacement.replace(/\s+/g, ' ')}\``
}
