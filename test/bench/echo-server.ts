// A language server that does nothing: it holds the texts and publishes one message on each version.
import {
  createConnection,
  DiagnosticSeverity,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver/node'
import { TextDocument } from 'vscode-languageserver-textdocument'

const connection = createConnection(process.stdin, process.stdout)
const documents = new TextDocuments(TextDocument)

connection.onInitialize(() => ({
  capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental },
}))
documents.onDidChangeContent(({ document }) => {
  const end = document.positionAt(document.getText().length)
  const message = { severity: DiagnosticSeverity.Hint, message: 'The end.' }
  connection.sendDiagnostics({
    uri: document.uri,
    version: document.version,
    diagnostics: [{ ...message, range: { start: end, end } }],
  })
})
documents.listen(connection)
connection.listen()
