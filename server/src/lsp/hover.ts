import {
  type Hover,
  type HoverParams,
  HoverRequest,
  MarkupKind,
} from 'vscode-languageserver-protocol'
import type { HoverPart, Step } from '../features/hover/parts.ts'
import { hover as hoverAt } from '../features/hover.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'
import { escaped, link } from './markdown.ts'

/** Any number explains itself down to the readings; each of those is a link to its line. */
export const hover: Feature = {
  listen(session) {
    session.connection.onRequest(HoverRequest.type, answering(session, 'measured', null, explained))
  },
}

function explained(seen: Seen, { position }: HoverParams): Hover | null {
  const found = hoverAt(seen.view, seen.places.offset(position))
  if (found === null) return null
  const { markdown } = seen.session.abilities
  const paragraphs = found.parts.map((part) => (markdown ? marked(part, seen) : plain(part)))
  return {
    range: seen.places.range(found.span),
    contents: {
      kind: markdown ? MarkupKind.Markdown : MarkupKind.PlainText,
      value: paragraphs.join('\n\n'),
    },
  }
}

function marked(part: HoverPart, seen: Seen): string {
  switch (part.kind) {
    case 'title':
      return `**${escaped(part.text)}**`
    case 'text':
    case 'formula':
      return escaped(part.text)
    case 'source':
      return `*${escaped(part.text)}*`
    case 'steps':
      return part.lines.map((step) => markedStep(step, seen)).join('\n')
  }
}

function markedStep({ depth, text, span }: Step, { job }: Seen): string {
  const location = span === null ? null : locationOf(job, span)
  if (location === null) return `${indent(depth)}- ${escaped(text)}`
  const { line, character } = location.range.start
  const address = `${location.uri}#L${line + 1},${character + 1}`
  return `${indent(depth)}- ${link(text, address)}`
}

function plain(part: HoverPart): string {
  if (part.kind !== 'steps') return part.text
  return part.lines.map(({ depth, text }) => indent(depth) + text).join('\n')
}

function indent(depth: number): string {
  return '  '.repeat(depth)
}
