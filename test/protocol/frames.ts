/** One message of the protocol, as it stands between the braces. */
export type Frame = Readonly<Record<string, unknown>>

export function frameOf(message: unknown): string {
  const body = JSON.stringify(message)
  return `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`
}

/** Takes bytes as they come and gives out whole messages; what belongs to none is a stray. */
export function framesIn(
  take: (frame: Frame) => void,
  stray: (bytes: string) => void,
): (bytes: Buffer) => void {
  let held = Buffer.alloc(0)
  return (bytes) => {
    held = Buffer.concat([held, bytes])
    for (;;) {
      const head = held.indexOf('\r\n\r\n')
      if (head < 0) return
      const header = /^Content-Length: (\d+)$/.exec(held.toString('utf8', 0, head))
      if (header === null) {
        stray(held.toString('utf8'))
        held = Buffer.alloc(0)
        return
      }
      const end = head + 4 + Number(header[1])
      if (held.length < end) return
      take(JSON.parse(held.toString('utf8', head + 4, end)))
      held = held.subarray(end)
    }
  }
}
