import type { Span } from '../facts/span.ts'
import type { Measured } from '../report/compiled.ts'
import { jobIndex } from './names/job-index.ts'
import type { KnownJob } from './rename/known-job.ts'
import { holdsInOrder } from './writing/holds-in-order.ts'

export type NameKindShown =
  | 'job'
  | 'room'
  | 'closet'
  | 'wall'
  | 'opening'
  | 'product'
  | 'floor'
  | 'prices'

/** A name of some job of the workspace. */
export interface WorkspaceName {
  readonly name: string
  readonly kind: NameKindShown
  /** What it belongs to: a wall's room, else the job's title. */
  readonly within: string
  readonly address: string
  readonly span: Span
}

/** More names than these help nobody: whoever seeks types on. */
const MOST = 500

/**
 * The names of many jobs that hold what is typed, sign by sign in order: jobs, rooms, closets, products,
 * floors, price books, and walls and openings that have names of their own. What a shared file tells is
 * told once. Names that begin with what is typed come first, then in the order of jobs and lines.
 */
export function workspaceNames(jobs: readonly KnownJob[], typed: string): readonly WorkspaceName[] {
  const sought = typed.trim().toLowerCase()
  const found = new Map<string, WorkspaceName>()
  for (const { measured, addressOf } of jobs) {
    for (const one of namesOf(measured)) {
      if (!holdsInOrder(one.name.toLowerCase(), sought)) continue
      const address = addressOf(one.span.file)
      const place = `${one.span.start} ${address}`
      if (!found.has(place)) found.set(place, { ...one, address })
    }
  }
  const begins = ({ name }: WorkspaceName): number =>
    name.toLowerCase().startsWith(sought) ? 0 : 1
  return [...found.values()].sort((a, b) => begins(a) - begins(b)).slice(0, MOST)
}

function namesOf(measured: Measured): readonly Omit<WorkspaceName, 'address'>[] {
  const { job, trees, root } = measured
  const { closets } = jobIndex(measured)
  const title = job.title === '' ? root : job.title
  const head = trees[0]?.blocks.find(({ word }) => word === 'job')
  const blocks = (['product', 'floor', 'prices'] as const).flatMap((kind) =>
    [...(jobIndex(measured).blocks.get(kind)?.values() ?? [])].flatMap(({ name }) =>
      name === null ? [] : [{ name: name.text, kind, within: title, span: name.span }],
    ),
  )
  return [
    ...(head === undefined
      ? []
      : [{ name: title, kind: 'job' as const, within: '', span: head.textSpan }]),
    ...job.rooms.flatMap((room) => roomNames(room, title)),
    ...[...closets.values()].map(({ room, recess }) => ({
      name: recess.label,
      kind: 'closet' as const,
      within: room.name.text,
      span: recess.span,
    })),
    ...blocks,
  ]
}

function roomNames(
  room: Measured['job']['rooms'][number],
  title: string,
): readonly Omit<WorkspaceName, 'address'>[] {
  const within = room.name.text
  return [
    { name: within, kind: 'room', within: title, span: room.name.span },
    ...room.walls.flatMap(({ name }) =>
      name === null ? [] : [{ name: name.text, kind: 'wall' as const, within, span: name.span }],
    ),
    ...room.openings.flatMap(({ name, kind }) =>
      name === null || kind === 'open side'
        ? []
        : [{ name: name.text, kind: 'opening' as const, within, span: name.span }],
    ),
  ]
}
