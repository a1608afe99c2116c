import type { FileRead } from '../host/host.ts'

/**
 * All that the server takes from where it runs: files, and turns. Time decides only when something is
 * worked out, never what comes of it.
 */
export interface Surroundings {
  /**
   * A file that a text named, '/'-separated, below the folder of this address (it ends in '/'), as the
   * host reads it. Null where only the client can.
   */
  readBelow(folder: string, path: string, limit: number): Promise<FileRead> | null
  /** Runs something in a moment, when what has come in since has had its turn. */
  soon(run: () => void): void
  /**
   * Runs something when the messages that have already come in are handled, as far as one can tell; the
   * function that it gives calls that off.
   */
  quiet(run: () => void): () => void
  /** Runs something later; the function that it gives calls that off. */
  after(ms: number, run: () => void): () => void
  /** Milliseconds since some moment: how long a slice of work has lasted. */
  now(): number
  /** Ends the process, if there is one. */
  exit(code: number): void
}
