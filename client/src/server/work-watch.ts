import type { Middleware } from 'vscode-languageclient'
import type { WorkEvent } from './crash-book.ts'

type Watched = Required<Pick<Middleware, 'sendRequest' | 'sendNotification'>>

/** Tells what the server is given to do, so that it is known what it died of. */
export function watchWork(note: (event: WorkEvent) => void): Watched {
  let requests = 0
  return {
    sendRequest: async (type, param, token, next) => {
      const file = fileOf(param)
      if (file === undefined) return next(type, param, token)
      requests += 1
      const task = `request ${requests}`
      note({ kind: 'sent', task, file })
      try {
        return await next(type, param, token)
      } finally {
        note({ kind: 'answered', task })
      }
    },
    sendNotification: (type, next, params) => {
      const method = typeof type === 'string' ? type : type.method
      const file = fileOf(params)
      if (
        file !== undefined &&
        (method === 'textDocument/didOpen' || method === 'textDocument/didChange')
      )
        note({ kind: 'sent', task: textTask(file), file })
      if (file !== undefined && method === 'textDocument/didClose')
        note({ kind: 'answered', task: textTask(file) })
      return next(type, params)
    },
  }
}

/** The working out of a file's text, which ends with its status. */
export function textTask(file: string): string {
  return `text of ${file}`
}

function fileOf(param: unknown): string | undefined {
  const { textDocument, uri } = (param ?? {}) as {
    readonly textDocument?: { readonly uri?: unknown }
    readonly uri?: unknown
  }
  const file = textDocument?.uri ?? uri
  return typeof file === 'string' ? file : undefined
}
