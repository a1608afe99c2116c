import { JOURNEY } from './journey.ts'

/** What VS Code calls, here as in its desktop program; the run has failed where it throws. */
export async function run(): Promise<void> {
  const failures: string[] = []
  for (const [what, step] of JOURNEY) {
    try {
      await step()
      console.log(`done: ${what}`)
    } catch (error) {
      failures.push(`${what}: ${error instanceof Error ? error.message : String(error)}`)
      console.log(`FAILED: ${failures.at(-1)}`)
    }
  }
  if (failures.length > 0) throw new Error(failures.join('\n'))
}
