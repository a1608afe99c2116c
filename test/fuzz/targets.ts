import { FILES, JOBS } from './corpus.ts'
import { holdJobPromises, runJob } from './job-promises.ts'
import { holdParserPromises, runParser } from './parser-promises.ts'
import type { Size } from './slow.ts'

/** A part of the product that any text may be given to. */
export interface Target {
  readonly name: 'parser' | 'job'
  /** What mutants are made from. */
  readonly corpus: readonly string[]
  /** Runs the part on a text: this is what is timed. Breaks off with a fault where it throws. */
  readonly run: (text: string) => Ran
}

export interface Ran {
  /** Message codes, for the tally. */
  readonly codes: readonly string[]
  /** What was laid: a floor's own size, which no text is blamed for. */
  readonly size: Size
  /** Holds the part's promises against what it gave. Breaks off with a fault. */
  readonly hold: () => void
}

export const PARSER: Target = {
  name: 'parser',
  corpus: FILES,
  run: (text) => {
    const run = runParser(text)
    return {
      codes: run.tree.messages.map(({ code }) => code),
      size: { pieces: 0, corners: 0 },
      hold: () => holdParserPromises(text, run),
    }
  },
}

export const JOB: Target = {
  name: 'job',
  corpus: JOBS,
  run: (text) => {
    const run = runJob(text)
    const { messages, floors } = run.compiled
    return {
      codes: messages.map(({ code }) => code),
      size: {
        pieces: floors.reduce((sum, { published }) => sum + published.pieces.length, 0),
        corners: floors.flatMap(({ net }) => net).reduce((sum, ring) => sum + ring.length, 0),
      },
      hold: () => holdJobPromises(text, run),
    }
  },
}
