import { nearest } from '../facts/near.ts'
import { explainText } from '../report/text/explain.ts'
import { visible } from '../report/visible.ts'
import type { Quantity, Takeoff } from '../takeoff/takeoff.ts'
import { EXIT, type ExitCode } from './exit.ts'
import { readJob } from './job-file.ts'
import type { Shell } from './shell.ts'
import { exitOf } from './verdict.ts'

/** Says why each quantity of one name is what it is; a name that there is not is misuse. */
export async function explainJob(
  file: string,
  { name, key }: { readonly name: string | undefined; readonly key: string },
  shell: Shell,
): Promise<ExitCode> {
  const job = await readJob(file, name, shell)
  if (job === null) return EXIT.errors
  const quantities = quantitiesOf(job.compiled.takeoff)
  const wanted = quantities.filter((quantity) => quantity.key === keyOf(key))
  if (wanted.length === 0) {
    shell.err(`floorscribe: ${unknownKey(key, keysOf(quantities))}\n`)
    return EXIT.misuse
  }
  shell.out(wanted.map((quantity) => explainText(quantity, job.compiled)).join('\n'))
  return exitOf(job.compiled)
}

function quantitiesOf({ floors, products }: Takeoff): readonly Quantity[] {
  return [...floors, ...products].flatMap(({ quantities }) => quantities)
}

function keyOf(typed: string): string {
  return typed.trim().toLowerCase().replaceAll('-', ' ')
}

function keysOf(quantities: readonly Quantity[]): readonly string[] {
  return [...new Set(quantities.map(({ key }) => key))]
}

function unknownKey(typed: string, keys: readonly string[]): string {
  if (keys.length === 0) return 'This job has no quantities yet.'
  const near = nearest(keyOf(typed), keys)
  const hint = near === null ? '' : ` Did you mean ${near}?`
  return `No quantity is called "${visible(typed)}".${hint} There are: ${keys.join(', ')}.`
}
