import type { Position, Uri } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import {
  FOLLOW_PREVIEW,
  type FollowPreview,
  PLACE_OF,
  type Place,
  type PlaceOf,
  SHAPES_AT,
  type Shapes,
  type ShapesAt,
} from '../../../server/src/lsp/custom.ts'
import { ask } from '../server/questions.ts'

/** From now on the server sends the plan of this file's job: all of it, then what changes; or none. */
export async function followPlan(client: BaseLanguageClient, file: Uri | null): Promise<void> {
  const followed: FollowPreview = { uri: file?.toString() ?? null }
  await ask(client, FOLLOW_PREVIEW, followed)
}

/** The shapes that a place in the text stands for; null while nobody knows. */
export async function shapesAt(
  client: BaseLanguageClient,
  file: Uri,
  { line, character }: Position,
): Promise<readonly string[] | null> {
  const question: ShapesAt = { uri: file.toString(), position: { line, character } }
  return (await ask<Shapes>(client, SHAPES_AT, question))?.ids ?? null
}

/** The text that a shape of the followed plan stands for. */
export async function placeOf(client: BaseLanguageClient, file: Uri, id: string): Promise<Place> {
  const question: PlaceOf = { uri: file.toString(), id }
  return ask<NonNullable<Place>>(client, PLACE_OF, question)
}
