import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { WARNING_CODES } from '../../server/src/facts/codes.ts'
import { links } from '../../server/src/features/links.ts'
import { view } from './marked.ts'

test('an include leads to its file, as the job calls it', () => {
  const { view: seen, ranges } = view(
    { 'jobs/a.floor': 'job A\ninclude ‹shop/prices.floor›  # ours\n' },
    { file: 'jobs/a.floor' },
  )
  expect(links(seen.tree, 'jobs/a.floor')).toEqual([
    { span: ranges[0], to: { kind: 'file', path: 'jobs/shop/prices.floor' } },
  ])
})

test.each(['../out.floor', '/etc/passwd.floor', 'http://x.floor', 'command:x.floor', 'a.txt', ''])(
  'an include that is refused leads nowhere: %s',
  (path) => {
    expect(links(view(`job A\ninclude ${path}\n`).view.tree, 'job.floor')).toEqual([])
  },
)

test('an accepted warning leads to its heading on the reference page', () => {
  const { view: seen, ranges } = view(
    'job A\n  accept ‹Narrowest  Rip›, because seen\n  accept nonsense\nfloor f\n  accept ‹stagger›\n',
  )
  expect(links(seen.tree, 'job.floor')).toEqual([
    { span: ranges[0], to: { kind: 'reference', heading: 'narrowest-rip' } },
    { span: ranges[1], to: { kind: 'reference', heading: 'stagger' } },
  ])
})

test('the reference page has a heading for each of them', () => {
  const page = readFileSync(new URL('../../server/LANGUAGE.md', import.meta.url), 'utf8')
  for (const code of WARNING_CODES) expect(page).toContain(`\n### ${code}\n`)
})
