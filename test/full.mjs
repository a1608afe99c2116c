// Every suite with the long counts: `npm run test:full`. Arguments go to vitest.
import { spawnSync } from 'node:child_process'

const { status } = spawnSync(
  'vitest',
  ['run', '--config', 'test/vitest.config.ts', '--testTimeout', '600000', ...process.argv.slice(2)],
  { stdio: 'inherit', env: { ...process.env, FLOORSCRIBE_FULL: '1' } },
)
process.exitCode = status ?? 1
