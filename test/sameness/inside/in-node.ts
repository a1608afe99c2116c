import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Compiled } from '../../../server/src/compile.ts'
import { type Compile, gather } from '../../../server/src/host/gather.ts'
import { NODE_HOST } from '../../../server/src/host/node.ts'
import type * as Commands from './commands.ts'
import type { Core, Outputs } from './core.ts'
import type { JobText, Order } from './order.ts'
import { work } from './work.ts'

/** What a process is started with. */
export interface NodeOrder extends Order {
  /** Each job has a folder of its name in it. May be relative to the process's own folder. */
  readonly jobsFolder: string
  /** The bundle that is asked. */
  readonly asked:
    | { readonly kind: 'core'; readonly bundle: string }
    | { readonly kind: 'commands'; readonly bundle: string }
}

const order: NodeOrder = JSON.parse(await readFile(process.argv[2]!, 'utf8'))
const answer = await work(order, { name: `Node ${process.versions.node.split('.')[0]}`, load })
process.stdout.write(JSON.stringify(answer))

async function load(): Promise<(job: JobText) => Promise<Outputs>> {
  const { asked, jobsFolder } = order
  const bundle = await import(pathToFileURL(asked.bundle).href)
  return asked.kind === 'core'
    ? fromFiles(bundle as Core)
    : (bundle as typeof Commands).fromCommands(jobsFolder)
}

/** Reads a job from its folder, as the command line does, and asks the core. */
function fromFiles(core: Core): (job: JobText) => Promise<Outputs> {
  return async ({ name, root }) => {
    const folder = join(order.jobsFolder, name)
    const text = await readFile(join(folder, root), 'utf8')
    return core.outputs(await gather(NODE_HOST, { folder, name: root, text }, turned(core)))
  }
}

function turned({ compile }: Core): Compile<Compiled> {
  return (texts, root, absent) =>
    compile(order.reversed ? new Map([...texts].reverse()) : texts, root, absent)
}
