import { type Asked, type Repair, repair } from './repair.ts'

/** For a comma with nothing on one side of it. */
export function commaRepairs(asked: Asked): readonly Repair[] {
  return [repair(asked, 'choice', 'Leave the comma out', [{ span: asked.place, text: '' }])]
}
