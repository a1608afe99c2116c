import { fileURLToPath } from 'node:url'
import { NODE_HOST } from '../host/node.ts'
import type { Surroundings } from './surroundings.ts'

/** Node's own turns, and files where the address is one of this computer. */
export const NODE_SURROUNDINGS: Surroundings = {
  readBelow(folder, path, limit) {
    const home = folderPath(folder)
    return home === null ? null : NODE_HOST.readBelow(home, path, limit)
  },
  soon: (run) => void setImmediate(run),
  // A connection handles one message in each turn and asks for the next only then.
  quiet(run) {
    let second: NodeJS.Immediate | null = null
    const first = setImmediate(() => {
      second = setImmediate(run)
    })
    return () => {
      clearImmediate(first)
      if (second !== null) clearImmediate(second)
    }
  },
  after(ms, run) {
    const timer = setTimeout(run, ms)
    return () => clearTimeout(timer)
  },
  now: () => performance.now(),
  exit: (code) => process.exit(code),
}

/** Null for an address that is no path here: of another scheme, or with an escaped '/' in it. */
function folderPath(folder: string): string | null {
  if (!folder.startsWith('file:')) return null
  try {
    return fileURLToPath(folder)
  } catch {
    return null
  }
}
