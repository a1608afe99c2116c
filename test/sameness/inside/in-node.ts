import { readFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'
import type { Outputs } from './core.ts'
import type { JobText, Order } from './order.ts'
import { work } from './work.ts'

/** What a process is started with. */
export interface NodeOrder extends Order {
  /** The bundle that asks for the outputs of a job: ask-core and the others. */
  readonly asker: string
  /** The bundle of the core. */
  readonly core: string
  /** The folder that QuickJS is installed in. */
  readonly quickJs: string
  /** Each job has a folder of its name in it. May be relative to the process's own folder. */
  readonly jobsFolder: string
}

export type Ask = (order: NodeOrder) => Promise<(job: JobText) => Promise<Outputs>>

const order: NodeOrder = JSON.parse(await readFile(process.argv[2]!, 'utf8'))
const answer = await work(order, {
  name: `Node ${process.versions.node.split('.')[0]}`,
  load: async () => {
    const { ask }: { ask: Ask } = await import(pathToFileURL(order.asker).href)
    return ask(order)
  },
})
process.stdout.write(JSON.stringify(answer))
