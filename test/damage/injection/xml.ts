/** What a strict reader finds in a piece of XML: the names of its elements and attributes, and its texts. */
export interface Xml {
  readonly elements: ReadonlySet<string>
  readonly attributes: ReadonlySet<string>
  readonly values: readonly string[]
}

const TAG = /^<(\/?)([a-zA-Z][\w:-]*)((?:\s+[a-zA-Z][\w:-]*="[^"<]*")*)\s*(\/?)>/
const ATTRIBUTE = /([a-zA-Z][\w:-]*)="([^"<]*)"/g
const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['lt', '<'],
  ['gt', '>'],
  ['amp', '&'],
  ['quot', '"'],
  ['#39', "'"],
])

/** Reads XML that has elements, attributes and text only; throws at whatever else stands there. */
export function readXml(text: string): Xml {
  const elements = new Set<string>()
  const attributes = new Set<string>()
  const values: string[] = []
  const open: string[] = []
  let at = text.startsWith('<?xml') ? text.indexOf('?>') + 2 : 0
  while (at < text.length) {
    if (text[at] !== '<') {
      const end = text.indexOf('<', at)
      const stop = end < 0 ? text.length : end
      values.push(plain(text.slice(at, stop)))
      at = stop
      continue
    }
    const tag = TAG.exec(text.slice(at))
    if (tag === null) throw new Error(`no tag: ${text.slice(at, at + 60)}`)
    const [whole, closes, name, given, empty] = tag
    elements.add(name!)
    for (const [, key, value] of given!.matchAll(ATTRIBUTE)) {
      attributes.add(key!)
      values.push(plain(value!))
    }
    if (closes === '/') {
      if (open.pop() !== name) throw new Error(`closes what is not open: ${whole}`)
    } else if (empty !== '/') open.push(name!)
    at += whole.length
  }
  if (open.length > 0) throw new Error(`never closed: ${open.join(', ')}`)
  return { elements, attributes, values }
}

function plain(text: string): string {
  return text.replace(/&([^;]*);?/g, (all, name: string) => {
    const sign = ENTITIES.get(name)
    if (sign === undefined || !all.endsWith(';')) throw new Error(`no entity: ${all}`)
    return sign
  })
}
