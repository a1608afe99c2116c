import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { BaseLanguageClient, ErrorHandler, LanguageClientOptions } from 'vscode-languageclient'
import { type Health, Lifeline } from '../../client/src/server/lifeline.ts'
import type { Death } from '../../client/src/server/server.ts'

beforeEach(() => {
  vi.useFakeTimers({ now: 0 })
})
afterEach(() => {
  vi.useRealTimers()
})

/** A server of which a test says how it dies; it comes up at once unless `fails` is set. */
class Made {
  starts = 0
  ends = 0
  fails = false
  death: Death = 'of itself'
  handler: ErrorHandler | undefined
  readonly health: Health[] = []
  readonly suspects: (readonly string[])[] = []
  readonly lifeline: Lifeline

  constructor() {
    const client = {
      start: async () => {
        this.starts += 1
        if (this.fails) throw new Error('it did not come up')
      },
      stop: async () => {},
    } as unknown as BaseLanguageClient
    const server = {
      client: (options: LanguageClientOptions) => {
        this.handler = options.errorHandler
        return client
      },
      death: async () => this.death,
      end: () => {
        this.ends += 1
      },
    }
    this.lifeline = new Lifeline(server, () => ({}))
    this.lifeline.onHealth((health) => this.health.push(health))
    this.lifeline.onSuspects((files) => this.suspects.push(files))
  }

  /** The connection is lost, as the client library tells it. */
  async die(death: Death): Promise<void> {
    this.death = death
    await this.handler!.closed()
  }
}

const later = (ms: number) => vi.advanceTimersByTimeAsync(ms)

describe('the server is kept going', () => {
  test('it is said how it is, from the start on', async () => {
    const made = new Made()
    await made.lifeline.start()
    expect(made.health).toEqual([{ kind: 'starting' }, { kind: 'running' }])
  })

  test('put down from outside it is back at once, as often as it is put down', async () => {
    const made = new Made()
    await made.lifeline.start()
    for (let i = 0; i < 20; i++) {
      await made.die('from outside')
      await later(0)
    }
    expect(made.starts).toBe(21)
  })

  test('fallen of itself again and again it is back after a wait, and never not', async () => {
    const made = new Made()
    await made.lifeline.start()
    for (const waitMs of [0, 1_000, 2_000, 5_000, 15_000, 60_000, 60_000]) {
      const { starts } = made
      await made.die('of itself')
      expect(made.health.at(-1)).toEqual({ kind: 'down', waitMs })
      if (waitMs > 0) await later(waitMs - 1)
      expect(made.starts).toBe(starts)
      await later(1)
      expect(made.starts).toBe(starts + 1)
    }
  })

  test('a start that fails with its connection is one fall, not two', async () => {
    const made = new Made()
    made.fails = true
    await Promise.all([made.lifeline.start(), made.die('of itself')])
    expect(made.health.filter(({ kind }) => kind === 'down')).toEqual([{ kind: 'down', waitMs: 0 }])
    made.fails = false
    await later(0)
    expect([made.starts, made.health.at(-1)]).toEqual([2, { kind: 'running' }])
  })

  test('the library is never asked to start it, for it gives up in the end', async () => {
    const made = new Made()
    await made.lifeline.start()
    expect(await made.handler!.closed()).toMatchObject({ action: 1, handled: true })
    expect(await made.handler!.error(new Error('x'), undefined, 9)).toMatchObject({ action: 1 })
  })

  test('a file that was in work at two falls is only read, until a person starts it anew', async () => {
    const made = new Made()
    await made.lifeline.start()
    for (let i = 0; i < 2; i++) {
      made.lifeline.note({ kind: 'sent', task: 'text of a', file: 'a' })
      await made.die('of itself')
      await later(1_000)
    }
    expect([made.suspects, made.lifeline.onlyRead]).toEqual([[['a']], ['a']])
    await made.lifeline.restart()
    expect(made.lifeline.onlyRead).toEqual([])
  })

  test('started by hand during a wait it does not start a second time after it', async () => {
    const made = new Made()
    await made.lifeline.start()
    await made.die('of itself')
    await later(0)
    await made.die('of itself')
    await made.lifeline.restart()
    const { starts } = made
    await later(10_000)
    expect(made.starts).toBe(starts)
  })

  test('what is left of a fallen server is ended, and all ends with the editor', async () => {
    const made = new Made()
    await made.lifeline.start()
    await made.die('of itself')
    expect(made.ends).toBe(1)
    await made.lifeline.dispose()
    await later(100_000)
    expect([made.starts, made.ends]).toEqual([1, 2])
  })
})
