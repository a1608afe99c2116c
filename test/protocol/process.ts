import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { type Frame, frameOf, framesIn } from './frames.ts'

const HOME = join(import.meta.dirname, '../..')
const BUNDLE = join(HOME, 'dist/server/main.mjs')

/** A running server, and all that it has written. */
export interface ServerProcess {
  readonly child: ChildProcess
  /** Sends bytes as they are. */
  write(bytes: string | Uint8Array): void
  send(frame: Frame): void
  /** Anything on standard output that is no frame. */
  readonly strays: string[]
  /** What it wrote to standard error. */
  readonly errors: string[]
  onFrame(take: (frame: Frame) => void): void
  /** The exit code, or the signal that ended it. */
  readonly ended: Promise<number | string>
}

/** Starts the server that is shipped, as an editor would over a pipe. */
export function startServer(script = BUNDLE, flags: readonly string[] = []): ServerProcess {
  if (!existsSync(script)) throw new Error(`${script} is missing: npm run build makes it`)
  const child = spawn(process.execPath, [...flags, script, '--stdio'], { cwd: HOME })
  const takers: ((frame: Frame) => void)[] = []
  const strays: string[] = []
  const errors: string[] = []
  const read = framesIn(
    (frame) => {
      for (const take of takers) take(frame)
    },
    (stray) => strays.push(stray),
  )
  child.stdout.on('data', read)
  child.stderr.on('data', (bytes) => errors.push(String(bytes)))
  child.stdin.on('error', () => {})
  const ended = new Promise<number | string>((resolve) =>
    child.on('close', (code, signal) => resolve(code ?? signal ?? 'unknown')),
  )
  const write = (bytes: string | Uint8Array) => void child.stdin.write(bytes)
  return {
    child,
    write,
    send: (frame) => write(frameOf(frame)),
    strays,
    errors,
    onFrame: (take) => void takers.push(take),
    ended,
  }
}
