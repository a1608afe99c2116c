import { describe, expect, test } from 'vitest'
import { statusWords } from '../../client/src/status-words.ts'

const counted = { uri: 'file:///a', state: 'counted', text: '21 boxes', tooltip: 'all' } as const
const running = { kind: 'running' } as const

describe('the status item', () => {
  test('says what the server says, and leads to the plan', () => {
    expect(statusWords(running, false, counted)).toEqual({
      text: '21 boxes',
      tooltip: 'all',
      command: 'floorscribe.showPlan',
    })
  })

  test('says something before the server does', () => {
    expect(statusWords({ kind: 'starting' }, false, undefined).text).toBe('Floorscribe')
  })

  test('says for how long the server is away, whatever was said before, and starts it', () => {
    const words = statusWords({ kind: 'down', waitMs: 5_000 }, true, counted)
    expect(words.tooltip).toContain('in 5 s')
    expect(words.command).toBe('floorscribe.restart')
  })

  test('does not flicker where the server is back at once', () => {
    expect(statusWords({ kind: 'down', waitMs: 0 }, false, counted).text).toBe('21 boxes')
  })

  test('says that a file is only read', () => {
    expect(statusWords(running, true, counted)).toMatchObject({
      text: 'Floorscribe: only read',
      command: 'floorscribe.restart',
    })
  })

  test('draws no icon that a name asks for', () => {
    const said = { ...counted, text: '$(bug) ash $(x) 3 boxes' }
    expect(statusWords(running, false, said).text).toBe('\\$(bug) ash \\$(x) 3 boxes')
  })
})
