import { spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/**
 * A command-line test as a person reads it: words about it, then sections that begin with `===`.
 *
 *     === file NAME     a file to lay down
 *     === run           a line for the shell, in a fresh folder
 *     === out           what it printed; left out when it printed nothing
 *     === err           the same for standard error
 *     === exit N        its exit code
 *
 * There may be several runs; files and runs are taken in order.
 */
export interface CommandTest {
  readonly words: string
  readonly steps: readonly Step[]
}

export type Step =
  | { readonly kind: 'file'; readonly name: string; readonly text: string }
  | ({ readonly kind: 'run'; readonly command: string } & Result)

export interface Result {
  readonly out: string
  readonly err: string
  readonly exit: number | null
}

const HEAD = /^=== (file|run|out|err|exit)(?: (.+))?$/
/** Stands for a last line without its line end. */
const NO_LINE_END = '\\ no line end'
const PATIENCE_MS = 30_000

export function parseCommandTest(text: string): CommandTest {
  const [words = '', ...sections] = text.split(/^(?==== )/m)
  const steps: Step[] = []
  for (const section of sections) {
    const end = section.indexOf('\n')
    const [, kind, name = ''] = HEAD.exec(section.slice(0, end)) ?? []
    const body = section.slice(end + 1)
    if (kind === 'file') steps.push({ kind, name, text: unmarked(body) })
    else if (kind === 'run') {
      steps.push({ kind, command: body.trimEnd(), out: '', err: '', exit: null })
    } else if (kind === undefined) {
      throw new Error(`not a section of a command test: ${section.slice(0, end)}`)
    }
  }
  return { words, steps }
}

/** The test as text, with the results as they now are. */
export function printCommandTest({ words, steps }: CommandTest): string {
  return words + steps.map(printStep).join('')
}

function printStep(step: Step): string {
  if (step.kind === 'file') return `=== file ${step.name}\n${marked(step.text)}`
  const out = step.out === '' ? '' : `=== out\n${marked(step.out)}`
  const err = step.err === '' ? '' : `=== err\n${marked(step.err)}`
  return `=== run\n${step.command}\n${out}${err}=== exit ${step.exit}\n`
}

/** Takes the steps in order in `folder`; what was printed replaces what was expected. */
export function runCommandTest(
  test: CommandTest,
  folder: string,
  env: Readonly<Record<string, string>>,
): CommandTest {
  const steps = test.steps.map((step): Step => {
    if (step.kind === 'run') return { ...step, ...runLine(step.command, folder, env) }
    const path = join(folder, step.name)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, step.text)
    return step
  })
  return { ...test, steps }
}

function runLine(command: string, cwd: string, env: Readonly<Record<string, string>>): Result {
  const options = { cwd, env, encoding: 'utf8', timeout: PATIENCE_MS, input: '' } as const
  const { stdout, stderr, status } = spawnSync('sh', ['-c', command], options)
  const here = (text: string) => text.replaceAll(cwd, 'HERE')
  return { out: here(stdout), err: here(stderr), exit: status }
}

function marked(text: string): string {
  return text === '' || text.endsWith('\n') ? text : `${text}\n${NO_LINE_END}\n`
}

function unmarked(text: string): string {
  const mark = `\n${NO_LINE_END}\n`
  return text.endsWith(mark) ? text.slice(0, -mark.length) : text
}
