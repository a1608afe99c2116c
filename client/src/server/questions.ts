import type { BaseLanguageClient } from 'vscode-languageclient'

/** Asks the server something of ours. Null while it is down, and where it has no answer. */
export async function ask<Answer>(
  client: BaseLanguageClient,
  method: string,
  question: object,
): Promise<Answer | null> {
  if (!client.isRunning()) return null
  try {
    return await client.sendRequest<Answer | null>(method, question)
  } catch {
    return null
  }
}
