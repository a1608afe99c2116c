import { buildFrame } from './frame.ts'
import { editorHost } from './host.ts'
import { Preview } from './preview.ts'

/** The page beside the text: it draws what it is sent and says what is chosen on it. */
const host = editorHost()
const preview = new Preview(buildFrame(document.body), host)
host.listen((message) => preview.hear(message))
host.send({ type: 'ready' })
