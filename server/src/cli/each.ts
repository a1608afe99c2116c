import { type ExitCode, worst } from './exit.ts'

/** Does the same for each file, one after the other, and answers with the worst code. */
export async function each(
  files: readonly string[],
  run: (file: string) => Promise<ExitCode>,
): Promise<ExitCode> {
  const codes: ExitCode[] = []
  for (const file of files) codes.push(await run(file))
  return worst(codes)
}
