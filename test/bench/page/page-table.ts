import type { ToPage } from '../../../client/webview/messages.ts'
import { previewChange } from '../../../server/src/features/preview-change.ts'
import { previewOfText } from '../../webview/pictures.ts'
import { openTheatre } from '../../webview/stage.ts'
import { median } from '../median.ts'
import { ms, table } from '../table.ts'
import { manyPieces, oneRoomChanged } from './many-pieces.ts'
import { redrawn } from './redraw.ts'

const ROOMS = 200
const CHANGED = 100
/** Of the change, forth and back each; of drawing it all again, which takes long, a third. */
const RUNS = 15

/** From the DOM alone to the DOM laid out again. */
interface Times {
  readonly patched: number
  readonly laidOut: number
}

/**
 * The page with about 10,000 pieces of which one room's are changed, from the message to the patched
 * DOM, beside drawing all of it again by `innerHTML`: in one browser without a window, forth and back.
 */
export async function pageTable(): Promise<string> {
  const text = manyPieces(ROOMS)
  const [before, after] = [previewOfText(text), previewOfText(oneRoomChanged(text, CHANGED))]
  const changes = [
    previewChange(before.picture, after.picture),
    previewChange(after.picture, before.picture),
  ]
  const theatre = await openTheatre()
  const { page, say } = await theatre.stage()
  await say({ type: 'preview', change: { kind: 'whole', picture: before.picture } })
  await page.waitForSelector('.piece', { state: 'attached', timeout: 120_000 })
  const messages = changes.map((change): ToPage => ({ type: 'preview', change }))
  const patch = await page.evaluate(patching, { messages, runs: RUNS })
  const drawings = [redrawn(after.picture.scene), redrawn(before.picture.scene)]
  const redraw = await page.evaluate(redrawing, { drawings, runs: RUNS / 3 })
  await theatre.close()
  const { shapes } = before.picture.scene
  const pieces = shapes.filter(({ kind }) => kind === 'piece').length
  const [change] = changes
  const put = change?.kind === 'part' ? change.shapes.put.length : 0
  return table(
    [`${pieces} pieces, ${shapes.length} shapes`, 'shapes touched', 'DOM patched', 'and laid out'],
    [
      row(`one room of ${ROOMS}, by what differs`, put, patch),
      row('all again, by innerHTML', shapes.length, redraw),
      ratioRow(patch, redraw),
    ],
  )
}

function row(name: string, touched: number, times: readonly Times[]): string[] {
  return [name, `${touched}`, ms(median(patchedOf(times))), ms(median(laidOutOf(times)))]
}

function ratioRow(patch: readonly Times[], redraw: readonly Times[]): string[] {
  const part = (of: (times: readonly Times[]) => readonly number[]): string =>
    `1/${(median(of(redraw)) / median(of(patch))).toFixed(0)}`
  return ['as a part', '', part(patchedOf), part(laidOutOf)]
}

const patchedOf = (times: readonly Times[]) => times.map(({ patched }) => patched)
const laidOutOf = (times: readonly Times[]) => times.map(({ laidOut }) => laidOut)

/** Runs in the page: each message is heard at once, as the editor's would be in a task of its own. */
async function patching({
  messages,
  runs,
}: {
  readonly messages: readonly ToPage[]
  readonly runs: number
}): Promise<Times[]> {
  const times: Times[] = []
  for (let run = 0; run < runs * 2; run++) {
    const data = structuredClone(messages[run % messages.length]!)
    const started = performance.now()
    window.dispatchEvent(new MessageEvent('message', { data }))
    const patched = performance.now() - started
    document.querySelector('.plan')?.getBoundingClientRect()
    times.push({ patched, laidOut: performance.now() - started })
    await new Promise((done) => requestAnimationFrame(done))
  }
  return times
}

/** Runs in the page: the whole drawing in place of the one that is there. */
async function redrawing({
  drawings,
  runs,
}: {
  readonly drawings: readonly string[]
  readonly runs: number
}): Promise<Times[]> {
  const times: Times[] = []
  const all = document.querySelector('.world > g:not(.marks)')!
  for (let run = 0; run < runs; run++) {
    const started = performance.now()
    all.innerHTML = drawings[run % drawings.length]!
    const patched = performance.now() - started
    document.querySelector('.plan')?.getBoundingClientRect()
    times.push({ patched, laidOut: performance.now() - started })
    await new Promise((done) => requestAnimationFrame(done))
  }
  return times
}
