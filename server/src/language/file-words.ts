import { baseLine, carried, line, plain, tapeLine, type Word } from './word.ts'

/** Lines that start in column one. */
export const FILE_WORDS: readonly Word[] = [
  line('file', 'floorscribe', ['COUNT'], 'The version of the language; the first line of a file.', {
    needs: ['COUNT'],
  }),
  plain('file', 'job', 'text', 'The title. A file with this line is a job; others are parts.', {
    opens: 'job',
  }),
  line(
    'file',
    'units',
    ['feet-inches|inches|mm|cm|m', 'bare inches|mm|cm|m'],
    'What lengths are printed in, and what a number without a unit is, in this file.',
    { needs: ['feet-inches|inches|mm|cm|m'] },
  ),
  tapeLine(
    'file',
    'What one reading is worth (one standard deviation), what one marked about is worth, and what the tape touched.',
  ),
  line('file', 'walls', ['LENGTH thick'], 'How thick walls are unless an opening says otherwise.', {
    needs: ['LENGTH thick'],
  }),
  baseLine('file', 'The base board: how thick, and what becomes of it.'),
  line('file', 'jambs', ['LENGTH under'], 'How far the floor runs under each undercut jamb.', {
    needs: ['LENGTH under'],
  }),
  line('file', 'allowance', ['PERCENT'], 'The waste percentage that the count is compared with.', {
    needs: ['PERCENT'],
  }),
  line(
    'file',
    'pile',
    ['COUNT pieces', 'COUNT courses'],
    'How many offcuts may wait, and for how many courses.',
  ),
  plain('file', 'include', 'text', 'Another file, by its path from this one.', { needs: ['PATH'] }),
  plain('file', 'room', 'name', 'A room: stand in it, look at a wall, go on to the right.', {
    opens: 'room',
  }),
  plain('file', 'product', 'name', 'A plank and its rules.', { opens: 'product' }),
  plain('file', 'floor', 'name', 'Rooms that are laid as one area.', { opens: 'floor' }),
  plain('file', 'prices', 'name', 'A price book.', { opens: 'prices' }),
]

export const JOB_WORDS: readonly Word[] = [
  plain('job', 'site', 'text', 'Where the job is.'),
  plain('job', 'date', 'text', 'The date to print.'),
  plain('job', 'revision', 'text', 'Which revision this is.'),
  ...carried('job'),
]
