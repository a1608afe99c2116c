import type { Session } from './session.ts'

/** One thing that an editor may ask for, and who answers; `offers.ts` tells the editor of it. */
export interface Feature {
  listen(session: Session): void
}
