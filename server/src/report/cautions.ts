import { COMMON_PRACTICE, type Source, sourceInWords } from '../facts/source.ts'
import type { Job } from '../job/job.ts'

/** Said before every caution. */
export const PREAMBLE =
  'Cautions. Reminders only, not legal, engineering or medical advice. Local codes, permits, the ' +
  'authority having jurisdiction and licensed professionals prevail.'

export interface Caution {
  readonly text: string
  readonly source: Source
  /** The source in words. */
  readonly sourceText: string
}

interface Rule extends Omit<Caution, 'sourceText'> {
  /** Whether the job gives reason for it. */
  readonly applies: (job: Job) => boolean
}

const published = (title: string): Source => ({ kind: 'published', title })
const fromMemory = (title: string): Source => ({ kind: 'from memory', title })

const RULES: readonly Rule[] = [
  {
    text: 'Old sheet vinyl, tile, felt backing and black adhesive may hold asbestos: unless certain, presume it; no sanding, dry scraping, drilling, sawing or breaking up before an analysis.',
    source: published('RFCI, Recommended Work Practices; 29 CFR 1926.1101'),
    applies: (job) => lies(job, ['vinyl', 'linoleum', 'tile', 'resilient', 'sheet']),
  },
  {
    text: 'Trim in homes from before 1978 may carry lead paint: taking it off or undercutting jambs can pass what counts as minor repair (6 sq ft a room); above it a certified firm works.',
    source: published('40 CFR 745.83'),
    applies: (job) => job.rooms.some((room) => room.openings.length > 0 || room.base !== null),
  },
  {
    text: 'Grinding or sawing concrete, tile and mortar makes silica dust: extraction or water, and a respirator; limit 50 µg/m³.',
    source: published('29 CFR 1926.1153'),
    applies: (job) =>
      lies(job, ['tile', 'stone', 'slab']) || rests(job, ['slab', 'concrete', 'screed']),
  },
  {
    text: 'A slab is tested for moisture, and heating tubes, cables and pipes in it are located, before anything is fixed or sealed.',
    source: fromMemory('29 CFR 1926.416'),
    applies: (job) => rests(job, ['slab', 'concrete', 'screed']),
  },
  {
    text: 'Tack strips, staples and knives cut: gloves, knee pads, eye protection.',
    source: fromMemory('29 CFR 1926.95, .102'),
    applies: (job) => lies(job, ['carpet', 'tack strip']) || job.floors.length > 0,
  },
  {
    text: 'Dust of wood, board and vinyl: cut outside or with extraction; saws with their guards, ears protected.',
    source: COMMON_PRACTICE,
    applies: (job) => job.floors.length > 0,
  },
  {
    text: 'Boxes weigh 30 to 75 lb; 51 lb is the most to lift under ideal conditions.',
    source: published('NIOSH 94-110'),
    applies: (job) => job.floors.length > 0,
  },
  {
    text: 'At stairs and level changes keep risers equal (largest less smallest at most 3/8 in) and nosings fastened.',
    source: fromMemory('IRC R311.7.5.1'),
    applies: (job) => job.rooms.some((room) => room.walls.some((wall) => wall.stair !== null)),
  },
]

/** The usual cautions that the job gives reason for, in a fixed order. */
export function cautionsOf(job: Job): readonly Caution[] {
  return RULES.filter((rule) => rule.applies(job)).map(({ text, source }) => ({
    text,
    source,
    sourceText: sourceInWords(source),
  }))
}

function lies(job: Job, words: readonly string[]): boolean {
  return job.rooms.some((room) => mentions(room.existing, words))
}

function rests(job: Job, words: readonly string[]): boolean {
  return job.rooms.some((room) => mentions(room.subfloor, words))
}

function mentions(said: readonly string[], words: readonly string[]): boolean {
  return said.some((text) => words.some((word) => text.toLowerCase().includes(word)))
}
