import { type Disposable, workspace } from 'vscode'
import { type BaseLanguageClient, CodeLensRequest, InlayHintRequest } from 'vscode-languageclient'
import type { Lifeline } from './server/lifeline.ts'
import { SECTION } from './settings.ts'

/** A setting holds as soon as it is changed. */
export function watchSettings(lifeline: Lifeline): Disposable {
  return workspace.onDidChangeConfiguration((change) => {
    const changed = (name: string) => change.affectsConfiguration(`${SECTION}.${name}`)
    if (changed('pauseBeforeCounts')) lifeline.restart()
    if (changed('hints')) askForHints(lifeline.client)
    if (changed('lenses')) askForLenses(lifeline.client)
  })
}

function askForHints(client: BaseLanguageClient): void {
  const feature = client.getFeature(InlayHintRequest.method)
  for (const document of workspace.textDocuments)
    feature.getProvider(document)?.onDidChangeInlayHints.fire()
}

function askForLenses(client: BaseLanguageClient): void {
  const feature = client.getFeature(CodeLensRequest.method)
  for (const document of workspace.textDocuments)
    feature.getProvider(document)?.onDidChangeCodeLensEmitter.fire()
}
