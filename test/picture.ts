// Draws each example, or the jobs named, to dist/pictures/ as SVG and PNG, for looking at.
import { execFileSync } from 'node:child_process'
import { globSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename } from 'node:path'
import { Resvg } from '@resvg/resvg-js'

const FOLDER = 'dist/pictures'
const PIXELS_WIDE = 1800

function isJob(path: string): boolean {
  return /^job\b/m.test(readFileSync(path, 'utf8'))
}

function draw(job: string): string {
  const name = `${FOLDER}/${basename(job, '.floor')}`
  const command = ['dist/floorscribe.mjs', 'estimate', '--drawing', `${name}.svg`, job]
  try {
    execFileSync(process.execPath, command, { stdio: ['ignore', 'ignore', 'inherit'] })
  } catch {
    // Its messages are printed; a job that is not sound is drawn all the same.
  }
  const svg = readFileSync(`${name}.svg`, 'utf8')
  const picture = new Resvg(svg, { fitTo: { mode: 'width', value: PIXELS_WIDE } }).render()
  writeFileSync(`${name}.png`, picture.asPng())
  return `${name}.png`
}

mkdirSync(FOLDER, { recursive: true })
const named = process.argv.slice(2)
const jobs = named.length > 0 ? named : globSync('examples/*.floor').filter(isJob).sort()
for (const job of jobs) console.log(draw(job))
