import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { LanguageClient } from 'vscode-languageclient/node'
import { type Death, SERVER_ID, SERVER_NAME, type Server } from './server.ts'

/** What ends a process that did nothing wrong; what it gets for faults of its own is not among them. */
const FROM_OUTSIDE: readonly unknown[] = ['SIGKILL', 'SIGTERM', 'SIGINT', 'SIGHUP', 'SIGQUIT']
/** The exit of a process is known at once, unless it closed its pipes and lives on. */
const PATIENCE_MS = 500

/** The server as a process of its own, on the Node that the editor runs its extensions on. */
export function processServer(script: string): Server {
  let child: ChildProcess | undefined
  let death: Promise<Death> = Promise.resolve('of itself')
  const start = async () => {
    child = spawn(process.execPath, [script, '--stdio'], { env: asNode(), windowsHide: true })
    death = deathOf(child)
    return child
  }
  return {
    client: (options) => new LanguageClient(SERVER_ID, SERVER_NAME, start, options),
    death: () => Promise.race([death, patience()]),
    end: () => child?.kill('SIGKILL'),
  }
}

/** The editor's own program runs a script like Node where it is told so. */
function asNode(): NodeJS.ProcessEnv {
  return { ...process.env, ELECTRON_RUN_AS_NODE: '1' }
}

async function deathOf(child: ChildProcess): Promise<Death> {
  try {
    const [, signal] = await once(child, 'exit')
    return FROM_OUTSIDE.includes(signal) ? 'from outside' : 'of itself'
  } catch {
    return 'of itself'
  }
}

function patience(): Promise<Death> {
  return new Promise((resolve) => setTimeout(resolve, PATIENCE_MS, 'of itself'))
}
