import type { Core } from './core.ts'
import type { Answer, JobText, Order } from './order.ts'
import { work } from './work.ts'

export type Where = 'page' | 'classic worker' | 'module worker'

/** What this page and its workers have and Node has not. */
declare const Worker: new (
  url: string,
  options: { readonly type: 'classic' | 'module' },
) => {
  onmessage: (event: { readonly data: Answer }) => void
  onerror: (event: { readonly message: string }) => void
  postMessage: (data: unknown) => void
}

/** In the page itself, or in a worker that it starts. */
export async function inBrowser(where: Where, order: Order): Promise<Answer> {
  if (where === 'page') return answer(where, order, loadModule)
  const type = where === 'classic worker' ? 'classic' : 'module'
  const worker = new Worker(`/${type}-worker.js`, { type })
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => resolve(data)
    worker.onerror = ({ message }) => reject(new Error(message))
    worker.postMessage(order)
  })
}

export function loadModule(): Promise<Core> {
  const core = '/core.mjs'
  return import(core)
}

export function answer(name: Where, order: Order, loadCore: () => Promise<Core>): Promise<Answer> {
  const load = async () => {
    const { outputsFrom } = await loadCore()
    return async (job: JobText) => outputsFrom(job, order.reversed)
  }
  return work(order, { name, load })
}
