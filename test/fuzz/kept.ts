import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { type Fault, faultOf } from './fault.ts'
import { shrink } from './shrink.ts'
import { holdSpeed, worked } from './slow.ts'
import type { Target } from './targets.ts'

const FOLDER = new URL('./kept/', import.meta.url)

/** Every text that once broke a promise, shrunk, by a name that says what it showed. */
export const KEPT: readonly { readonly name: string; readonly text: string }[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.floor'))
  .sort()
  .map((name) => ({ name, text: readFileSync(new URL(name, FOLDER), 'utf8') }))

/** The fault of one text given to one target; slowness counts where it is timed. */
export function faultIn(target: Target, text: string, { timed }: { timed: boolean }): Fault | null {
  return faultOf(() => {
    const started = worked()
    const ran = target.run(text)
    const ms = worked() - started
    ran.hold()
    if (timed) holdSpeed(target, text, ms, ran.size)
  })
}

/** Shrinks a text that broke a promise and writes it beside the others; gives the file's name. */
export function keep(target: Target, text: string, { promise }: Fault): string {
  const timed = promise.endsWith('slow')
  const isSame = (smaller: string) => faultIn(target, smaller, { timed })?.promise === promise
  const small = shrink(text, isSame, timed ? 150 : 1500)
  const words = `${target.name} ${promise}`.toLowerCase().replaceAll(/[^a-z]+/g, '-')
  let name = `${words}.floor`
  for (let next = 2; existsSync(new URL(name, FOLDER)); next++) name = `${words}-${next}.floor`
  writeFileSync(new URL(name, FOLDER), small)
  return name
}
