import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Compiled } from '../../../server/src/compile.ts'
import { type Compile, gather } from '../../../server/src/host/gather.ts'
import { NODE_HOST } from '../../../server/src/host/node.ts'
import type { Core } from './core.ts'
import type { Ask, NodeOrder } from './in-node.ts'

/** Reads a job from its folder, as the command line does, and asks the core. */
export const ask: Ask = async (order) => {
  const core: Core = await import(pathToFileURL(order.core).href)
  return async ({ name, root }) => {
    const folder = join(order.jobsFolder, name)
    const text = await readFile(join(folder, root), 'utf8')
    const { outputs } = core
    return outputs(await gather(NODE_HOST, { folder, name: root, text }, turned(core, order)))
  }
}

function turned({ compile }: Core, { reversed }: NodeOrder): Compile<Compiled> {
  return (texts, root, absent) =>
    compile(reversed ? new Map([...texts].reverse()) : texts, root, absent)
}
