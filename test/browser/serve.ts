import { once } from 'node:events'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname } from 'node:path'

export interface Served {
  /** Ends with '/'. */
  readonly url: string
  readonly close: () => void
}

const TYPES: ReadonlyMap<string, string> = new Map([
  ['.html', 'text/html; charset=utf-8'],
  ['.css', 'text/css; charset=utf-8'],
  ['.js', 'text/javascript; charset=utf-8'],
  ['.mjs', 'text/javascript; charset=utf-8'],
  ['.json', 'application/json; charset=utf-8'],
])

/** Serves texts by their names, to this machine alone; browsers trust such an address like https. */
export async function serve(texts: ReadonlyMap<string, string>): Promise<Served> {
  const server = createServer(({ url }, response) => {
    const name = new URL(url ?? '/', 'http://127.0.0.1').pathname.slice(1)
    const text = texts.get(name)
    response.writeHead(text === undefined ? 404 : 200, {
      'content-type': TYPES.get(extname(name)) ?? 'text/plain; charset=utf-8',
    })
    response.end(text)
  })
  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const { port } = server.address() as AddressInfo
  return {
    url: `http://127.0.0.1:${port}/`,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}
