import { groupBy } from '../exact.ts'
import type { PublishedBreach } from '../layout.ts'
import type { Breach, Finding } from '../report.ts'
import { listed, mm, place } from '../say.ts'

/**
 * The published breaches and the ones found are the same. Breaches of one rule and the same pieces
 * are compared as a bag: equal ones pair off first; of the rest, what is found and not published is
 * hidden, what is published and not found is invented, and where one of each is left it was misstated.
 */
export function compareBreaches(
  published: readonly PublishedBreach[],
  found: readonly Breach[],
): readonly Finding[] {
  const said = groupBy(published, subject)
  const seen = groupBy(found, subject)
  const subjects = new Set([...seen.keys(), ...said.keys()])
  return [...subjects].flatMap((key) => compare(said.get(key) ?? [], seen.get(key) ?? []))
}

function subject({ rule, direction, pieces }: Breach): string {
  return [rule, direction, ...pieces].join(' ')
}

function compare(said: readonly Breach[], seen: readonly Breach[]): Finding[] {
  const hidden = [...seen]
  const unseen = said.filter((breach) => {
    const i = hidden.findIndex((other) => whole(other) === whole(breach))
    if (i >= 0) hidden.splice(i, 1)
    return i < 0
  })
  const misstated = Math.min(unseen.length, hidden.length)
  return [
    ...hidden.slice(0, misstated).map((breach, i) => misstate(unseen[i]!, breach)),
    ...hidden.slice(misstated).map(hide),
    ...unseen.slice(misstated).map(invent),
  ]
}

function whole({ value, limit, at }: Breach): string {
  return [value, limit, ...at].join(' ')
}

function hide(breach: Breach): Finding {
  const text = `A breach is hidden: ${inWords(breach)}.`
  return { code: 'hidden-breach', text, ...where(breach) }
}

function invent(breach: Breach): Finding {
  const text = `A breach is listed that the rings do not show: ${inWords(breach)}.`
  return { code: 'invented-breach', text, ...where(breach) }
}

function misstate(said: Breach, seen: Breach): Finding {
  const text = `A breach is listed as ${inWords(said)}; the rings show ${inWords(seen)}.`
  return { code: 'breach-misstated', text, ...where(seen) }
}

function where({ pieces, at }: Breach): Pick<Finding, 'piece' | 'at'> {
  return pieces[0] === undefined ? { at } : { piece: pieces[0], at }
}

/** "stagger of 50.8 mm (203.2 mm wanted) at pieces 3 and 9, 12.7 mm along, 0 mm across" */
export function inWords({ rule, value, limit, at, pieces, direction }: Breach): string {
  const of = direction === '' ? rule : `${rule} ${direction}`
  const wanted = rule === 'longest run' ? `at most ${mm(limit)}` : `${mm(limit)} wanted`
  const who = pieces.length === 0 ? '' : ` at ${listed('piece', pieces)},`
  return `${of} of ${mm(value)} (${wanted})${who} ${place(at)}`
}
