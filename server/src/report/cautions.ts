import { COMMON_PRACTICE, type Source, sourceInWords } from '../facts/source.ts'
import type { Job, Room } from '../job/job.ts'

/** Said before every caution. */
export const PREAMBLE =
  'Cautions. Reminders only, not legal, engineering or medical advice. Local codes, permits, the ' +
  'authority having jurisdiction and licensed professionals prevail.'

export interface Caution {
  /** What can hurt, in a word or two. */
  readonly about: string
  readonly text: string
  readonly source: Source
  /** The source in words. */
  readonly sourceText: string
}

/** What of a job decides which cautions it gives reason for. */
interface Work {
  /** The rooms that a floor covers; others keep what they have. */
  readonly rooms: readonly Room[]
  readonly removesTrim: boolean
}

interface Rule extends Omit<Caution, 'sourceText'> {
  readonly applies: (work: Work) => boolean
}

const published = (title: string): Source => ({ kind: 'published', title })
const fromMemory = (title: string): Source => ({ kind: 'from memory', title })

const RULES: readonly Rule[] = [
  {
    about: 'asbestos',
    text:
      'Old sheet vinyl, tile, felt backing and black adhesive may hold asbestos: unless certain, ' +
      'presume it; no sanding, dry sweeping, dry scraping, drilling, sawing or breaking up. ' +
      'Neither age nor size proves that there is none; states are often stricter.',
    source: published('RFCI Recommended Work Practices; 29 CFR 1926.1101'),
    applies: lies('vinyl', 'linoleum', 'tile', 'resilient', 'sheet', 'mastic'),
  },
  {
    about: 'lead paint',
    text:
      'Trim in homes from before 1978 may carry lead paint. Minor repair ends at 6 sq ft a room ' +
      'inside, jambs that are undercut count by the surface disturbed, and destroying painted trim ' +
      'is demolition whatever its area: above that a certified firm and containment.',
    source: published('40 CFR 745.83'),
    applies: (work) =>
      work.removesTrim || work.rooms.some((room) => room.openings.some((one) => one.jambs)),
  },
  {
    about: 'silica',
    text:
      'Grinding, sawing and mixing concrete, tile and mortar makes silica dust: water or ' +
      'extraction, and a respirator. Limit 50 µg/m³, action from 25.',
    source: published('29 CFR 1926.1153'),
    applies: (work) =>
      lies('tile', 'stone', 'slate')(work) || rests('slab', 'concrete', 'screed')(work),
  },
  {
    about: 'hidden services',
    text: 'Heat mats, tubes, post-tension cables and pipes in a slab: locate and isolate them first.',
    source: fromMemory('29 CFR 1926.416'),
    applies: rests('slab', 'concrete', 'screed'),
  },
  {
    about: 'strips, staples, knives',
    text: 'Tack strips, staples and knives cut: gloves, knee pads, eye protection.',
    source: fromMemory('29 CFR 1926.95, .102'),
    applies: (work) => work.rooms.length > 0,
  },
  {
    about: 'dust',
    text: 'Dust of wood, board and vinyl: cut outside or with extraction.',
    source: COMMON_PRACTICE,
    applies: (work) => work.rooms.length > 0,
  },
  {
    about: 'saws, nailers',
    text: 'Guards stay on saws and nailers; wear hearing protection.',
    source: fromMemory('29 CFR 1926.300–.304, .52'),
    applies: (work) => work.rooms.length > 0,
  },
  {
    about: 'lifting',
    text: '51 lb is the most to lift under ideal conditions; boxes run from 30 to 75 lb.',
    source: published('NIOSH 94-110'),
    applies: (work) => work.rooms.length > 0,
  },
  {
    about: 'steps',
    text:
      'At a stair the finished floors decide: the largest riser exceeds the smallest by at most ' +
      '3/8 in, and the nosing is fastened before anything leans on it.',
    source: fromMemory('IRC R311.7.5.1'),
    applies: (work) =>
      work.rooms.some((room) =>
        room.walls.some((wall) => wall.stair !== null || wall.edge.kind === 'nosing'),
      ),
  },
  {
    about: 'level changes',
    text:
      'Where another floor begins: up to 1/4 in upright, to 1/2 in bevelled 1:2, more is a ramp; ' +
      'counted from the finished floors.',
    source: published('ADA 303'),
    applies: (work) =>
      work.rooms.some((room) =>
        room.openings.some((one) => one.to !== null && !within(work, one.to.key)),
      ),
  },
  {
    about: 'stop and refer',
    text:
      'Mould, sewage, pests or unsound joists under what comes up: stop and refer. Gas appliances ' +
      'are never moved by the crew.',
    source: COMMON_PRACTICE,
    applies: (work) => work.rooms.some((room) => room.existing.length > 0),
  },
]

/** The usual cautions that the job gives reason for, in a fixed order. */
export function cautionsOf(job: Job): readonly Caution[] {
  const covered = new Set(job.floors.flatMap((floor) => floor.rooms.map((room) => room.key)))
  const rooms = job.rooms.filter((room) => covered.has(room.name.key))
  const work = { rooms, removesTrim: removesTrim(rooms) }
  return RULES.filter((rule) => rule.applies(work)).map(({ about, text, source }) => ({
    about,
    text,
    source,
    sourceText: sourceInWords(source),
  }))
}

function removesTrim(rooms: readonly Room[]): boolean {
  const comesOff = (fate: string | null): boolean =>
    fate === 'off and back' || fate === 'new' || fate === 'base off and back' || fate === 'base new'
  return rooms.some(
    (room) =>
      comesOff(room.base?.fate ?? null) || room.walls.some((wall) => comesOff(wall.edge.kind)),
  )
}

function within({ rooms }: Work, key: string): boolean {
  return rooms.some((room) => room.name.key === key)
}

/** What lies in the rooms now mentions one of the words. */
function lies(...words: readonly string[]): (work: Work) => boolean {
  return ({ rooms }) => rooms.some((room) => mentions(room.existing, words))
}

/** What the rooms' floors rest on mentions one of the words. */
function rests(...words: readonly string[]): (work: Work) => boolean {
  return ({ rooms }) => rooms.some((room) => mentions(room.subfloor, words))
}

function mentions(said: readonly string[], words: readonly string[]): boolean {
  return said.some((text) => words.some((word) => text.toLowerCase().includes(word)))
}
