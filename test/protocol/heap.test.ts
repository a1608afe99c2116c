import { expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { dice } from '../generate/dice.ts'
import { type Editing, edited } from '../live/edits.ts'
import { Editor } from './editor.ts'
import { PRODUCT, SOUND, uriOf } from './house.ts'

const EDITS = effort(400, 100_000)
/** Until the engine has compiled what it will, and every cache holds what it may. */
const UNCOUNTED = effort(400, 4_000)
const MOST_GROWTH = 5_000_000
/** So many go by before anybody waits for an answer. */
const BURST = 8

/** Tells the heap in use, after collecting, on a signal. */
const TELLING = `data:text/javascript,${encodeURIComponent(
  'process.on("SIGUSR2",()=>{gc();gc();process.stderr.write(process.memoryUsage().heapUsed+"\\n")})',
)}`

async function heapOf({ server }: Editor): Promise<number> {
  const told = new Promise<string>((resolve) =>
    server.child.stderr?.once('data', (bytes) => resolve(String(bytes))),
  )
  server.child.kill('SIGUSR2')
  return Number(await told)
}

test(`${EDITS} edits leave the heap as it was`, { timeout: 60 * 60_000 }, async () => {
  const editor = await Editor.open({ flags: ['--expose-gc', '--import', TELLING] })
  const first = new Map([
    ['job.floor', SOUND.replace(PRODUCT, 'include larch.floor\n')],
    ['larch.floor', PRODUCT],
  ])
  for (const [name, text] of first) editor.openFile(uriOf(name), text)
  const chance = dice(5)
  let editing: Editing = { files: first, before: [] }
  const type = async (edits: number) => {
    for (let i = 0; i < edits; i++) {
      // A job that is edited at random falls to pieces in the end, and then nothing is worked out.
      const next = i % 60 === 59 ? { files: first, before: [] } : edited(editing, chance)
      for (const [name, text] of next.files)
        if (text !== editing.files.get(name)) editor.change(uriOf(name), { text })
      editing = next
      if (i % BURST !== 0) continue
      await editor.diagnostics(uriOf('job.floor'))
      editor.forget()
    }
  }
  const atStart = async (): Promise<number> => {
    for (const [name, text] of first) editor.change(uriOf(name), { text })
    editing = { files: first, before: [] }
    await editor.diagnostics(uriOf('job.floor'))
    return await heapOf(editor)
  }
  await type(UNCOUNTED)
  const before = await atStart()
  await type(EDITS)
  const after = await atStart()
  editor.server.child.kill('SIGKILL')
  expect(after - before).toBeLessThan(MOST_GROWTH)
})
