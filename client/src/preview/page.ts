import { Uri, type Webview, type WebviewOptions } from 'vscode'
import { pageHtml } from '../../webview/html.ts'

/** The page sees the files that were built for it and nothing else of the machine. */
export function pageOptions(extension: Uri): WebviewOptions {
  return {
    enableScripts: true,
    enableForms: false,
    enableCommandUris: false,
    localResourceRoots: [Uri.joinPath(extension, 'dist')],
  }
}

export function pageOf(webview: Webview, extension: Uri): string {
  const address = (file: string) =>
    webview.asWebviewUri(Uri.joinPath(extension, 'dist', file)).toString()
  return pageHtml({
    nonce: nonce(),
    scriptUri: address('page.js'),
    styleUri: address('page.css'),
  })
}

/** 128 bits of true chance. */
function nonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
