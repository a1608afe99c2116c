import {
  type Diagnostic,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
} from 'vscode-languageserver-protocol'
import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { parse } from '../language/parse.ts'
import type { Abilities } from './abilities.ts'
import { diagnosticOf, heaviest, MOST } from './diagnostics.ts'
import type { Documents } from './documents.ts'
import { carried, type Late, lateIn } from './late-messages.ts'
import { locationOf } from './locations.ts'
import type { OpenJob } from './open-job.ts'
import { placesIn } from './places.ts'
import { isSameSaid, isShown, type SentDiagnostics } from './sent-diagnostics.ts'

const NOTHING: SentDiagnostics = { diagnostics: [], text: null }

/** Sends what is wrong with each file: of a file in several jobs, what any of them has to say. */
export class Publisher {
  readonly #connection: ProtocolConnection
  readonly #documents: Documents
  readonly #abilities: Abilities
  /** What each job has to say of each address that it reaches. */
  readonly #said = new Map<OpenJob, ReadonlyMap<string, readonly Diagnostic[]>>()
  readonly #late = new Map<OpenJob, Late>()
  readonly #read = new Map<string, readonly Diagnostic[]>()
  /** What the editor shows for each address; nothing where it shows nothing. */
  readonly #sent = new Map<string, SentDiagnostics>()

  constructor(connection: ProtocolConnection, documents: Documents, abilities: Abilities) {
    this.#connection = connection
    this.#documents = documents
    this.#abilities = abilities
  }

  /**
   * A job is measured or counted anew. Before the count only what is new is worth a message; with it
   * everything must be where it belongs.
   */
  show(job: OpenJob): void {
    const before = this.#said.get(job)?.keys() ?? []
    const now = this.#diagnosticsOf(job)
    this.#said.set(job, now)
    for (const uri of new Set([...now.keys(), ...before])) this.#publish(uri)
  }

  drop(job: OpenJob): void {
    const before = [...(this.#said.get(job)?.keys() ?? [])]
    this.#said.delete(job)
    this.#late.delete(job)
    for (const uri of before) this.#publish(uri)
  }

  /** An open file that is never counted: only what its own lines have to say. */
  showRead(uri: string): void {
    const tree = parse(uri, this.#documents.get(uri)?.getText() ?? '')
    const places = placesIn(tree)
    const locate = ({ start, end }: Span) => ({ uri, range: places.range({ start, end }) })
    this.#read.set(
      uri,
      tree.messages.map((one) => diagnosticOf(one, places, locate, this.#abilities)),
    )
    this.#publish(uri)
  }

  dropRead(uri: string): void {
    if (this.#read.delete(uri)) this.#publish(uri)
  }

  #diagnosticsOf(job: OpenJob): ReadonlyMap<string, readonly Diagnostic[]> {
    const byFile = Map.groupBy(this.#messagesOf(job), ({ span }) => span.file)
    const trees = job.measured?.trees ?? []
    return new Map(
      trees.map((tree) => {
        const messages = heaviest(byFile.get(tree.file) ?? [])
        const places = job.placesIn(tree)
        const locate = (span: Span) => locationOf(job, span)
        const list = messages.map((one) => diagnosticOf(one, places, locate, this.#abilities))
        return [job.addressOf(tree.file), list]
      }),
    )
  }

  #messagesOf(job: OpenJob): readonly Message[] {
    const { measured, counted } = job
    if (measured === null) return []
    if (counted !== null) this.#late.set(job, lateIn(counted, measured))
    const late = this.#late.get(job)
    const messages =
      counted?.messages ??
      (late === undefined ? measured.messages : merged(measured.messages, carried(late, measured)))
    return messages.filter(({ accepted }) => !accepted)
  }

  #publish(uri: string): void {
    const speaking = [...this.#said].filter(([, said]) => said.has(uri)).map(([job]) => job)
    // What a job said of an older text is not shown again: it is about to speak of the newest.
    if (speaking.some(({ measured }) => measured === null)) return
    const isFinal = speaking.every(({ counted }) => counted !== null)
    const diagnostics = this.#all(uri)
    const document = this.#documents.get(uri)
    const sent = this.#sent.get(uri) ?? NOTHING
    const isKnown = isFinal ? isShown(sent, diagnostics, document) : isSameSaid(sent, diagnostics)
    if (isKnown || (diagnostics.length === 0 && sent.diagnostics.length === 0)) return
    if (diagnostics.length === 0) this.#sent.delete(uri)
    else this.#sent.set(uri, { diagnostics, text: document?.getText() ?? null })
    this.#connection.sendNotification(PublishDiagnosticsNotification.type, {
      uri: document?.uri ?? uri,
      ...(document === undefined ? {} : { version: document.version }),
      diagnostics: [...diagnostics],
    })
  }

  /** What two jobs say alike is said once, as heavily as either; whoever spoke first, in the order of places. */
  #all(uri: string): readonly Diagnostic[] {
    const lists = [...this.#said.values()].map((said) => said.get(uri) ?? [])
    lists.push(this.#read.get(uri) ?? [])
    const own = lists.filter(({ length }) => length > 0)
    if (own.length < 2) return own[0] ?? []
    const once = new Map<string, Diagnostic>()
    for (const one of own.flat().sort(byPlace)) {
      const key = JSON.stringify([one.range, one.code, one.message])
      if (!once.has(key)) once.set(key, one)
    }
    return [...once.values()].slice(0, MOST)
  }
}

function byPlace(a: Diagnostic, b: Diagnostic): number {
  const [one, other] = [a.range.start, b.range.start]
  return (
    one.line - other.line ||
    one.character - other.character ||
    compared(String(a.code), String(b.code)) ||
    compared(String(a.message), String(b.message)) ||
    (a.severity ?? 0) - (b.severity ?? 0) ||
    compared(JSON.stringify(a), JSON.stringify(b))
  )
}

function compared(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** In the order of places and codes that the messages of a whole count have. */
function merged(early: readonly Message[], late: readonly Message[]): readonly Message[] {
  return [...early, ...late].sort((a, b) => a.span.start - b.span.start || compared(a.code, b.code))
}
