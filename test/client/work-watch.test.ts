import { describe, expect, test } from 'vitest'
import type { WorkEvent } from '../../client/src/server/crash-book.ts'
import { textTask, watchWork } from '../../client/src/server/work-watch.ts'

function watched() {
  const events: WorkEvent[] = []
  return { events, ...watchWork((event) => events.push(event)) }
}

const FILE = 'file:///a.floor'
const ABOUT_FILE = { textDocument: { uri: FILE } }

describe('what the server is given to do', () => {
  test('a text is in work from its opening on, and until it is closed', async () => {
    const { events, sendNotification } = watched()
    const next = async () => {}
    await sendNotification('textDocument/didOpen', next, ABOUT_FILE)
    await sendNotification('textDocument/didChange', next, ABOUT_FILE)
    await sendNotification('textDocument/didSave', next, ABOUT_FILE)
    await sendNotification('textDocument/didClose', next, ABOUT_FILE)
    expect(events).toEqual([
      { kind: 'sent', task: textTask(FILE), file: FILE },
      { kind: 'sent', task: textTask(FILE), file: FILE },
      { kind: 'answered', task: textTask(FILE) },
    ])
  })

  test('a question is in work until its answer, of whatever kind', async () => {
    const { events, sendRequest } = watched()
    await sendRequest('textDocument/hover', ABOUT_FILE, undefined, async () => 1)
    const refused = sendRequest('floorscribe/drawing', { uri: FILE }, undefined, async () => {
      throw new Error('fell')
    })
    await expect(refused).rejects.toThrow('fell')
    expect(events.map((event) => event.kind)).toEqual(['sent', 'answered', 'sent', 'answered'])
    expect(new Set(events.map((event) => 'task' in event && event.task)).size).toBe(2)
  })

  test('a question about no file goes by', async () => {
    const { events, sendRequest } = watched()
    expect(await sendRequest('shutdown', undefined, undefined, async () => 'gone')).toBe('gone')
    expect(events).toEqual([])
  })
})
