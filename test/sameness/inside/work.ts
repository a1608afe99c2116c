import type { Outputs } from './core.ts'
import { changeEngine } from './engine.ts'
import type { Answer, JobText, Order, Output, Seen } from './order.ts'
import { look } from './seen.ts'

/** Where the work is done, and how the core, or a job's outputs, are come by there. */
export interface Place {
  readonly name: string
  readonly load: () => Promise<(job: JobText) => Promise<Outputs>>
}

/** Taken before anything is forbidden: digests are the test's own matter, not the core's. */
const { subtle } = crypto

/** Does what is ordered, in the order it is ordered in. */
export async function work(order: Order, { name, load }: Place): Promise<Answer> {
  const { clock, otherSines, forbidden } = order.engine
  changeEngine({ clock, otherSines, forbidden: false })
  const seen: Seen = look(name)
  changeEngine({ clock: '', otherSines: false, forbidden })
  const outputsOf = await load()
  const outputs: Output[] = []
  for (const job of order.jobs)
    for (const [output, text] of await outputsOf(job)) {
      const key = `${job.name}: ${output}`
      const digest = await sha256(text)
      outputs.push(order.wanted.includes(key) ? { key, digest, text } : { key, digest })
    }
  return { seen, outputs }
}

async function sha256(text: string): Promise<string> {
  const hash = await subtle.digest('SHA-256', new TextEncoder().encode(text))
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
