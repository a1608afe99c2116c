/** What a command's exit code says; the numbers are promised in the help and the reference page. */
export const EXIT = {
  /** Sound and complete; notes and accepted warnings included. */
  sound: 0,
  /** An error, a warning that no `accept` line settles, a failed proof, a file not read or written. */
  errors: 1,
  /** The command line itself was not understood. */
  misuse: 2,
  /** Nothing is wrong, but something is still to come, so no total is final. */
  incomplete: 3,
} as const

export type ExitCode = (typeof EXIT)[keyof typeof EXIT]

const BY_WEIGHT: readonly ExitCode[] = [EXIT.sound, EXIT.incomplete, EXIT.errors, EXIT.misuse]

/** The code of a run that did several things. */
export function worst(codes: readonly ExitCode[]): ExitCode {
  return BY_WEIGHT[Math.max(0, ...codes.map((code) => BY_WEIGHT.indexOf(code)))] ?? EXIT.sound
}

export const EXIT_HELP = `
Exit codes:
  0  sound and complete (notes and accepted warnings included)
  1  an error, a warning not accepted, a failed proof, a file not read or
     not written
  2  the command line was not understood
  3  nothing is wrong, but something is still to come`
