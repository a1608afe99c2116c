import { carried, EDGE_KINDS, line, plain, type Word } from './word.ts'

export const FLOOR_WORDS: readonly Word[] = [
  plain('floor', 'rooms', 'names', 'The rooms: one area, one run of planks.'),
  line(
    'floor',
    'lay',
    [
      'running east-west|north-south|north-east|north-west',
      'running along WALL of ROOM',
      'PRODUCT',
    ],
    'The product and its direction.',
    { needs: ['PRODUCT'] },
  ),
  line('floor', 'start', ['along WALL of ROOM'], 'The wall that the first course lies along.', {
    needs: ['along WALL of ROOM'],
  }),
  line('floor', 'shift', ['LENGTH WAY'], 'Moves the line off its balanced place.', {
    needs: ['LENGTH WAY'],
  }),
  line(
    'floor',
    'break',
    ['ROOM to ROOM', 'with TRIM', 'called NAME'],
    'The run is parted in this doorway.',
    { needs: ['ROOM to ROOM'] },
  ),
  line(
    'floor',
    'edge',
    ['WALL of ROOM', 'ROOM to ROOM', 'with TRIM', 'called NAME', EDGE_KINDS, 'LENGTH gap'],
    'What the rim meets there, and what covers it.',
  ),
  line(
    'floor',
    'expect',
    ['COUNT boxes|box', 'COUNT planks', 'NUMBER sq ft', 'NUMBER sq m', 'within PERCENT'],
    'What the numbers should be; a difference is an error.',
  ),
  ...carried('floor'),
]
