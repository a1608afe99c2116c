import { type CodeLens, CodeLensRequest } from 'vscode-languageserver-protocol'
import { type Lens, lenses as lensesIn } from '../features/lenses.ts'
import { isRoot } from '../job/includes.ts'
import { canonical } from './addresses.ts'
import { answering, type Seen } from './answering.ts'
import { GO_TO, SHOW_PLAN } from './custom.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'

/** Answered when the counts are there, like hints. */
export const lenses: Feature = {
  listen(session) {
    session.connection.onRequest(CodeLensRequest.type, answering(session, 'counted', [], lensesOf))
  },
}

async function lensesOf(seen: Seen): Promise<CodeLens[]> {
  const { view, places, session, uri } = seen
  const jobs = isRoot(view.tree) ? null : (await session.jobs.of(canonical(uri))).length
  return lensesIn(view, jobs === null ? null : { jobs }).map((lens) => ({
    range: places.range(lens.span),
    command: { title: titleOf(lens), ...commandOf(seen, lens) },
  }))
}

/** A title may hold what the editor would draw as an icon. */
function titleOf({ text }: Lens): string {
  return text.replaceAll('$(', '$ (')
}

/** Without a command the line is only read: so it is where the editor has none of ours. */
function commandOf(
  { uri, job, session }: Seen,
  { does }: Lens,
): { readonly command: string; readonly arguments?: unknown[] } {
  if (does === null || !session.abilities.runsCommands) return { command: '' }
  switch (does.kind) {
    case 'preview':
      return { command: SHOW_PLAN, arguments: [uri] }
    case 'go':
      return { command: GO_TO, arguments: [locationOf(job, does.to)] }
  }
}
