import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Compiled } from '../../../server/src/compile.ts'
import { type Compile, gather } from '../../../server/src/host/gather.ts'
import { LARGEST_TEXT } from '../../../server/src/host/host.ts'
import { NODE_HOST } from '../../../server/src/host/node.ts'
import { textOf } from '../../../server/src/host/read-text.ts'
import type { Core } from './core.ts'
import type { Ask, NodeOrder } from './in-node.ts'

/** Reads a job from its folder, as the command line does, and asks the core. */
export const ask: Ask = async (order) => {
  const core: Core = await import(pathToFileURL(order.core).href)
  return async ({ name, root }) => {
    const folder = join(order.jobsFolder, name)
    const read = textOf(root, await NODE_HOST.read(join(folder, root), LARGEST_TEXT))
    if (read.kind !== 'text') throw new Error(read.reason)
    const { text } = read
    const { outputs } = core
    return outputs(await gather(NODE_HOST, { folder, name: root, text }, turned(core, order)))
  }
}

function turned({ compile }: Core, { reversed }: NodeOrder): Compile<Compiled> {
  return (texts, root, absent) =>
    compile(reversed ? new Map([...texts].reverse()) : texts, root, absent)
}
