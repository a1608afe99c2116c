/**
 * JSON for people who read differences: short values (an object or list that fits a line) stand on
 * one line, longer ones member by member. Keys keep the order they are given in. Values are plain:
 * strings, safe integers, booleans, null, lists and objects.
 */
export function writeJson(value: unknown): string {
  return `${lines(value, '')}\n`
}

const WIDTH = 160

function lines(value: unknown, indent: string): string {
  const short = JSON.stringify(value)
  if (typeof value !== 'object' || value === null) return short
  if (short.length + indent.length <= WIDTH) return short
  if (isLeafList(value)) return short
  const inner = `${indent}  `
  if (Array.isArray(value))
    return `[\n${value.map((one) => inner + lines(one, inner)).join(',\n')}\n${indent}]`
  const members = Object.entries(value).map(
    ([key, one]) => `${inner}${JSON.stringify(key)}: ${lines(one, inner)}`,
  )
  return `{\n${members.join(',\n')}\n${indent}}`
}

/** One piece is one line, however long its ring. */
function isLeafList(value: object): boolean {
  return 'piece' in value && 'ring' in value
}
