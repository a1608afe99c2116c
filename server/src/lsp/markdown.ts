/** Every sign that Markdown, or what editors add to it, gives a meaning to. */
const NOTATION = /[!#$&()*+\-.:<=>@[\\\]^_`{|}~]/g

/**
 * A text as Markdown that reads as that very text: every sign that could be notation is escaped, and a
 * line end is a blank. What people write never becomes a link, a picture or a heading.
 */
export function escaped(text: string): string {
  return text.replace(/[\r\n]+/g, ' ').replace(NOTATION, '\\$&')
}

/** A link with a text of its own; the address is one that was written by us, without blanks or brackets. */
export function link(text: string, address: string): string {
  return `[${escaped(text)}](${address})`
}
