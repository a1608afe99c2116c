import type { Answer, Order } from './order.ts'

interface WorkerScope {
  onmessage: (event: { readonly data: Order }) => void
  postMessage(answer: Answer): void
}

/** Answers each order; what it throws comes to the page as an error of the worker. */
export function serveOrders(answer: (order: Order) => Promise<Answer>): void {
  const scope = globalThis as unknown as WorkerScope
  scope.onmessage = ({ data }) => {
    answer(data).then(
      (done) => scope.postMessage(done),
      (error) =>
        queueMicrotask(() => {
          throw error
        }),
    )
  }
}
