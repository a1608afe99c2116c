import './node-version.ts'
import { NODE_HOST } from '../host/node.ts'
import { codeOf, reasonFor } from '../host/node-reason.ts'
import { EXIT } from './exit.ts'
import { run } from './program.ts'

/** The program's own faults: one sentence for the person, the rest only for who asks for it. */
function faultText(error: unknown): string {
  const told =
    'floorscribe: this is a fault of floorscribe, not of your file. Please report ' +
    'it with the file and the command; FLOORSCRIBE_DEBUG=1 in front of the command shows where it happened.\n'
  const trace = error instanceof Error ? error.stack : String(error)
  return process.env.FLOORSCRIBE_DEBUG === '1' ? `${told}${trace}\n` : told
}

/**
 * Whoever reads the output may stop reading (`floorscribe … | head`): that ends the program quietly.
 * Anything else that keeps the output from being written is said.
 */
process.stdout.on('error', (error) => {
  if (codeOf(error) !== 'EPIPE') {
    process.stderr.write(`floorscribe: the answer was not written: ${reasonFor(error)}.\n`)
    process.exitCode = EXIT.errors
  }
  process.exit()
})
process.stderr.on('error', () => process.exit(EXIT.errors))

try {
  process.exitCode = await run(process.argv.slice(2), {
    host: NODE_HOST,
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    terminal: { out: process.stdout.isTTY === true, err: process.stderr.isTTY === true },
    env: process.env,
  })
} catch (error) {
  process.stderr.write(faultText(error))
  process.exitCode = EXIT.errors
}
