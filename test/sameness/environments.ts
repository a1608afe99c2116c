import { readFileSync } from 'node:fs'
import { FOLDERS, type FolderKind } from './folders.ts'
import type { EngineChanges } from './inside/order.ts'

/** One row of environments.md. */
export interface Environment {
  readonly where: Where
  readonly zone: string
  readonly locale: string
  readonly folder: FolderKind
  readonly order: JobOrder
  readonly engine: EngineChanges
  /** For V8, in a process of Node. */
  readonly flags: readonly string[]
  readonly variables: Readonly<Record<string, string>>
  /** The row as it stands. */
  readonly row: string
}

const WHERE = [
  'Node 24',
  'Node 22',
  'command',
  'QuickJS',
  'page',
  'classic worker',
  'module worker',
] as const
type Where = (typeof WHERE)[number]

const ORDERS = ['listed', 'reversed', 'shuffled', 'twice'] as const
type JobOrder = (typeof ORDERS)[number]

/** The table in environments.md; a word in it that says nothing here throws. */
export function readEnvironments(): readonly Environment[] {
  const page = readFileSync(new URL('environments.md', import.meta.url), 'utf8')
  const rows = page
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .slice(1)
  return rows.map(environmentOf)
}

export function environmentOf(row: string): Environment {
  const cells = row
    .split('|')
    .slice(1, -1)
    .map((cell) => cell.trim())
  const [where = '', zone = '', locale = '', clock = '', folder = '', order = '', engine = ''] =
    cells
  const words = engine.split(', ').filter((word) => word !== '')
  const changes = words.filter((word) => word === 'other sines' || word === 'forbidden')
  const variables = words.filter((word) => /^[A-Z_]+=/.test(word))
  const flags = words.filter((word) => word.startsWith('--'))
  if (changes.length + variables.length + flags.length !== words.length)
    throw new Error(`not known of an engine: ${engine}`)
  return {
    where: oneOf(WHERE, where),
    zone,
    locale,
    folder: oneOf(FOLDERS, folder === '' ? 'plain' : folder),
    order: oneOf(ORDERS, order),
    engine: {
      clock,
      otherSines: changes.includes('other sines'),
      forbidden: changes.includes('forbidden'),
    },
    flags: flags.flatMap((flag) => flag.split(' ')),
    variables: Object.fromEntries(variables.map((word) => word.split(/=(.*)/).slice(0, 2))),
    row: cells.filter((cell) => cell !== '').join(', '),
  }
}

function oneOf<T extends string>(known: readonly T[], word: string): T {
  const found = known.find((one) => one === word)
  if (found === undefined) throw new Error(`"${word}" is none of ${known.join(', ')}`)
  return found
}
