/** How far a job may have to be before an answer can be given. */
export type Milestone = 'measured' | 'counted'

/** Whoever waits for a job to come so far. */
export class Waiting {
  #all: { readonly stage: Milestone; readonly go: () => void }[] = []

  for(stage: Milestone): Promise<void> {
    return new Promise((go) => this.#all.push({ stage, go }))
  }

  /** Lets those go on whose stage is reached. */
  release(isReached: (stage: Milestone) => boolean): void {
    const { ready = [], waiting = [] } = Object.groupBy(this.#all, ({ stage }) =>
      isReached(stage) ? 'ready' : 'waiting',
    )
    this.#all = waiting
    for (const { go } of ready) go()
  }
}
