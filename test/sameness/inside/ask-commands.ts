import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { run, type World } from '../../../server/src/cli/program.ts'
import { NODE_HOST } from '../../../server/src/host/node.ts'
import type { Ask } from './in-node.ts'

/** What the commands themselves print for a job; the drawing is written, and read again. */
export const ask: Ask = async ({ jobsFolder }) => {
  return async ({ name, root }) => {
    const file = join(jobsFolder, name, root)
    const drawing = join(jobsFolder, name, 'as drawn.svg')
    return new Map([
      ['check JSON', await printed('check', '--format', 'json', file)],
      ['estimate', await printed('estimate', '--drawing', drawing, file)],
      ['estimate JSON', await printed('estimate', '--format', 'json', file)],
      ['cut list', await printed('layout', file)],
      ['layout JSON', await printed('layout', '--format', 'json', file)],
      ['drawing', await readFile(drawing, 'utf8')],
    ])
  }
}

async function printed(...words: string[]): Promise<string> {
  const out: string[] = []
  const world: World = {
    host: NODE_HOST,
    out: (text) => out.push(text),
    err: () => {},
    terminal: { out: false, err: false },
    env: process.env,
  }
  await run(words, world)
  return out.join('')
}
