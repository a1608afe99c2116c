import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Ask } from './in-node.ts'

/** What is used of QuickJS, which comes as WebAssembly; values in it are freed by hand. */
interface QuickJs {
  newContext(): Context
}
interface Context {
  readonly global: Value
  newString(text: string): Value
  setProp(holder: Value, name: string, value: Value): void
  evalCode(code: string): unknown
  unwrapResult(result: unknown): Value
  getString(value: Value): string
}
interface Value {
  dispose(): void
}

/** The core in an engine that shares nothing with V8; a process of Node is only its host. */
export const ask: Ask = async ({ core, quickJs, reversed }) => {
  const context = (await load(quickJs)).newContext()
  evaluate(context, await readFile(core, 'utf8'))
  if (evaluate(context, 'typeof Intl') !== 'undefined') throw new Error('this is not QuickJS')
  return async (job) => {
    const order = context.newString(JSON.stringify([job, reversed]))
    context.setProp(context.global, 'order', order)
    order.dispose()
    const outputs = 'FloorscribeCore.outputsFrom(...JSON.parse(order))'
    return new Map(JSON.parse(evaluate(context, `JSON.stringify([...${outputs}])`)))
  }
}

function load(folder: string): Promise<QuickJs> {
  const require = createRequire(`${folder}/package.json`)
  const { newQuickJSWASMModuleFromVariant } = require('quickjs-emscripten-core')
  return newQuickJSWASMModuleFromVariant(require('@jitl/quickjs-ng-wasmfile-release-sync'))
}

function evaluate(context: Context, code: string): string {
  const value = context.unwrapResult(context.evalCode(code))
  const text = context.getString(value)
  value.dispose()
  return text
}
