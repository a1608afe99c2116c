import {
  type Definition,
  type DefinitionLink,
  type DefinitionParams,
  DefinitionRequest,
} from 'vscode-languageserver-protocol'
import { definition as definitionAt } from '../features/definition.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'

export const definition: Feature = {
  listen(session) {
    session.connection.onRequest(
      DefinitionRequest.type,
      answering(session, 'measured', null, definedAt),
    )
  },
}

function definedAt(
  { view, job, places, session }: Seen,
  { position }: DefinitionParams,
): Definition | DefinitionLink[] | null {
  const found = definitionAt(view, places.offset(position))
  if (found === null) return null
  const locations = found.places.flatMap((span) => locationOf(job, span) ?? [])
  if (!session.abilities.linksToDefinition) return locations
  return locations.map(({ uri, range }) => ({
    originSelectionRange: places.range(found.from),
    targetUri: uri,
    targetRange: range,
    targetSelectionRange: range,
  }))
}
