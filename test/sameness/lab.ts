import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import type { Browser } from 'playwright-core'
import { launchBrowser } from '../browser/launch.ts'
import { type Served, serve } from '../browser/serve.ts'
import { dice } from '../generate/dice.ts'
import { bundles } from './bundles.ts'
import type { Environment } from './environments.ts'
import { node22, quickJs } from './fetched.ts'
import { layJobs } from './folders.ts'
import type { NodeOrder } from './inside/in-node.ts'
import type { Answer, JobText, Order } from './inside/order.ts'

const run = promisify(execFile)
const PAGE = '<!doctype html><meta charset="utf-8"><script type="module" src="/page.js"></script>'

/** Where jobs are run in any environment. */
export interface Lab {
  readonly base: string
  /** The file of the core that processes of Node load. */
  readonly core: string
  readonly node22: string
  readonly quickJs: string
  readonly browser: Browser
  readonly served: Served
}

/** Makes the bundles, and fetches what the machine lacks: Node 22, QuickJS, a browser. */
export async function openLab(): Promise<Lab> {
  const base = mkdtempSync(join(tmpdir(), 'floorscribe-same-'))
  const texts = await bundles()
  for (const [name, text] of texts) writeFileSync(join(base, name), text)
  const served = await serve(new Map([...texts, ['page.html', PAGE]]))
  const core = join(base, 'core.mjs')
  const fetched = { node22: node22(), quickJs: quickJs() }
  return { base, core, ...fetched, browser: await launchBrowser(), served }
}

export async function closeLab({ base, browser, served }: Lab): Promise<void> {
  await browser.close()
  served.close()
  rmSync(base, { recursive: true, force: true })
}

/** Runs jobs in an environment; the outputs of the `wanted` keys come back whole. */
export function runIn(
  lab: Lab,
  environment: Environment,
  jobs: readonly JobText[],
  wanted: readonly string[] = [],
): Promise<Answer> {
  const order: Order = {
    jobs: inOrder(jobs, environment),
    engine: environment.engine,
    reversed: environment.order !== 'listed',
    wanted,
  }
  return isInBrowser(environment)
    ? inBrowser(lab, environment, order)
    : inNode(lab, environment, order)
}

function isInBrowser({ where }: Environment): boolean {
  return where === 'page' || where.endsWith('worker')
}

function inOrder(jobs: readonly JobText[], { order, row }: Environment): readonly JobText[] {
  switch (order) {
    case 'listed':
      return jobs
    case 'reversed':
      return jobs.toReversed()
    case 'shuffled':
      return shuffled(jobs, row)
    case 'twice':
      return [...jobs, ...jobs.toReversed()]
  }
}

/** Another order for each row, the same in every run. */
function shuffled(jobs: readonly JobText[], row: string): readonly JobText[] {
  const { below } = dice([...row].reduce((sum, letter) => sum + letter.codePointAt(0)!, 0))
  const mixed = [...jobs]
  for (let last = mixed.length - 1; last > 0; last--) {
    const other = below(last + 1)
    ;[mixed[last], mixed[other]] = [mixed[other]!, mixed[last]!]
  }
  return mixed
}

/** One process that does all; its environment holds what the row says and nothing of ours. */
async function inNode(lab: Lab, environment: Environment, order: Order): Promise<Answer> {
  const own = mkdtempSync(join(lab.base, 'run-'))
  const { jobs, startedIn } = layJobs(own, environment.folder, order.jobs)
  const file = join(own, 'order.json')
  const nodeOrder: NodeOrder = { ...order, ...askedOf(lab, environment), jobsFolder: jobs }
  writeFileSync(file, JSON.stringify(nodeOrder))
  const program = environment.where === 'Node 22' ? lab.node22 : process.execPath
  const { stdout } = await run(
    program,
    [...environment.flags, join(lab.base, 'in-node.mjs'), file],
    { cwd: startedIn, env: variablesOf(environment), maxBuffer: 2 ** 30 },
  )
  rmSync(own, { recursive: true, force: true })
  return JSON.parse(stdout)
}

function askedOf(lab: Lab, { where }: Environment): Pick<NodeOrder, 'asker' | 'core' | 'quickJs'> {
  const { core, quickJs } = lab
  const bundle = (name: string) => join(lab.base, name)
  if (where === 'command') return { asker: bundle('ask-commands.mjs'), core, quickJs }
  if (where !== 'QuickJS') return { asker: bundle('ask-core.mjs'), core, quickJs }
  return { asker: bundle('ask-quickjs.mjs'), core: bundle('core.js'), quickJs }
}

function variablesOf({ zone, locale, variables }: Environment): NodeJS.ProcessEnv {
  const name = locale === 'C' ? locale : `${locale}.UTF-8`
  return { PATH: process.env.PATH, TZ: zone, LC_ALL: name, LANG: name, ...variables }
}

async function inBrowser(lab: Lab, environment: Environment, order: Order): Promise<Answer> {
  const { where, zone, locale } = environment
  const context = await lab.browser.newContext({
    timezoneId: zone,
    locale: locale.replace('_', '-'),
  })
  try {
    const page = await context.newPage()
    await page.goto(`${lab.served.url}page.html`, { waitUntil: 'load' })
    return await page.evaluate(`inBrowser(${JSON.stringify(where)}, ${JSON.stringify(order)})`)
  } finally {
    await context.close()
  }
}
