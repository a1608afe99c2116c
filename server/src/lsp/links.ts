import { type DocumentLink, DocumentLinkRequest } from 'vscode-languageserver-protocol'
import { type Link, links as linksIn } from '../features/links.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'

export const links: Feature = {
  listen(session) {
    session.connection.onRequest(
      DocumentLinkRequest.type,
      answering(session, 'measured', [], linksOf),
    )
  },
}

function linksOf(seen: Seen): DocumentLink[] {
  return linksIn(seen.view.tree, seen.view.measured.root).flatMap(({ span, to }) => {
    const target = targetOf(seen, to)
    return target === null ? [] : [{ range: seen.places.range(span), target }]
  })
}

function targetOf({ job, session }: Seen, to: Link['to']): string | null {
  switch (to.kind) {
    case 'file':
      return job.addressOf(to.path)
    case 'reference': {
      const { reference } = session.abilities
      return reference === null ? null : `${reference}#${to.heading}`
    }
  }
}
