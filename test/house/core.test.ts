import { describe, expect, test } from 'vitest'
import { type Node, nodesOf, placeOf, readServer, type Source } from './sources.ts'

/** Exact on every machine; sin, pow, hypot and the others differ in the last bit between engines. */
const MATH = ['floor', 'ceil', 'round', 'trunc', 'abs', 'min', 'max', 'sqrt', 'sign']
/** Numbers read or printed by the engine's own rules, clocks, locales, and the world outside. */
const GLOBALS = [
  'parseFloat',
  'parseInt',
  'Date',
  'Intl',
  'performance',
  'Temporal',
  'process',
  'Buffer',
  'require',
  'globalThis',
  'console',
  'fetch',
  'crypto',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'eval',
  'Function',
]
const METHODS = [
  'toFixed',
  'toPrecision',
  'toExponential',
  'localeCompare',
  'toLocaleString',
  'toLocaleLowerCase',
  'toLocaleUpperCase',
]
const OUTER = ['host', 'lsp', 'cli']

/** Why a node may not stand in the pure part, or null. */
function banned(node: Node, parent: Node | undefined): string | null {
  if (node.type === 'MemberExpression') return bannedMember(node)
  if (node.type === 'CallExpression' || node.type === 'NewExpression') return bannedCall(node)
  if (node.operator === '**' && !isExactPower(node)) return 'a power of a number'
  if (node.type === 'Identifier' && GLOBALS.includes(String(node.name)) && isUse(node, parent))
    return String(node.name)
  return null
}

function bannedCall(node: Node): string | null {
  const callee = node.callee as Node
  if (nameOf(callee) === 'Number') return 'Number('
  if (nameOf(callee.property) !== 'normalize') return null
  const [form] = node.arguments as readonly Node[]
  return form?.value === 'NFC' || form?.value === 'NFD'
    ? null
    : 'a normal form that changes figures'
}

/** Powers of a BigInt are exact, and so are those of two that stand as figures in the text. */
function isExactPower({ left, right }: Node): boolean {
  const base = left as Node
  const power = right as Node
  const figure = power.type === 'UnaryExpression' ? (power.argument as Node) : power
  return typeof base.bigint === 'string' || (base.value === 2 && typeof figure.value === 'number')
}

function bannedMember({ object, property, computed }: Node): string | null {
  const member = nameOf(property)
  if (nameOf(object) === 'Math') return computed || !MATH.includes(member) ? `Math.${member}` : null
  if (nameOf(object) === 'Number' && ['parseFloat', 'parseInt'].includes(member))
    return `Number.${member}`
  return METHODS.includes(member) ? `.${member}` : null
}

function nameOf(value: unknown): string {
  const node = value as Node | null
  return node?.type === 'Identifier' ? String(node.name) : ''
}

/** An identifier that stands for a value or a type, not the name of a member or a key. */
function isUse(node: Node, parent: Node | undefined): boolean {
  if (parent === undefined) return true
  return !(
    (parent.type === 'MemberExpression' && parent.property === node && parent.computed !== true) ||
    parent.key === node
  )
}

function offences(source: Pick<Source, 'nodes' | 'path' | 'text'>): string[] {
  const parents = new Map<unknown, Node>()
  for (const node of source.nodes)
    for (const child of Object.values(node).flat()) parents.set(child, node)
  return source.nodes.flatMap((node) => {
    const why = banned(node, parents.get(node))
    return why === null ? [] : [`${placeOf(source as Source, node)} uses ${why}`]
  })
}

describe('the pure part counts alike everywhere', () => {
  const pure = readServer().filter(({ folder }) => !OUTER.includes(folder))

  test('no engine arithmetic, clock, locale, screen or file', () => {
    expect(pure.flatMap(offences)).toEqual([])
  })

  test.each([
    'Math.hypot(1, 2)',
    'Math["sin"](1)',
    'Number(x)',
    'Number.parseFloat(x)',
    'parseInt(x)',
    'new Date()',
    'let d: Date',
    'x.toFixed(2)',
    'a.localeCompare(b)',
    'x.toLocaleString()',
    '2 ** x',
    '10 ** -3',
    'process.exit()',
    's.normalize("NFKC")',
  ])('%s would be found', (text) => {
    expect(offences({ path: 'x', text, nodes: nodesOf(text) })).toHaveLength(1)
  })

  test.each([
    'Math.sqrt(2)',
    'Number.MAX_SAFE_INTEGER',
    'Number.isInteger(x)',
    '10n ** places',
    '2 ** -50',
    's.normalize("NFC")',
    'job.process',
    'const a = { process: 1 }',
    '// Math.random()',
    '"new Date()"',
  ])('%s is fine', (text) => {
    expect(offences({ path: 'x', text, nodes: nodesOf(text) })).toEqual([])
  })
})
