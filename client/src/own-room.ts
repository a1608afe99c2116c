import { commands, type ExtensionContext, type Memento, type Uri } from 'vscode'

/** By this the last step of the walkthrough is done, in this window and in every later one. */
const DONE = 'floorscribe.ownRoomCounted'

/** Whether a person has counted a room of their own. */
export class OwnRoom {
  readonly #memory: Memento
  readonly #examples = new Set<string>()

  constructor({ globalState }: ExtensionContext) {
    this.#memory = globalState
    if (this.#isDone) this.#tell()
  }

  /** This one is only to look at. */
  except(example: Uri): void {
    this.#examples.add(example.toString())
  }

  counted(job: Uri): void {
    if (this.#isDone || this.#examples.has(job.toString())) return
    this.#memory.update(DONE, true)
    this.#tell()
  }

  get #isDone(): boolean {
    return this.#memory.get<unknown>(DONE) === true
  }

  #tell(): void {
    commands.executeCommand('setContext', DONE, true)
  }
}
