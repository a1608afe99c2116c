/** The oldest Node that the program runs on. It is asked first: below it the rest does not even load. */
const OLDEST = 22

const running = process.versions.node
if (Number(running.split('.')[0]) < OLDEST) {
  process.stderr.write(
    `floorscribe: this is Node ${running}, and Node ${OLDEST} or later is needed.\n`,
  )
  process.exit(1)
}
