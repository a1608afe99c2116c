import picocolors from 'picocolors'

export type Colours = ReturnType<typeof picocolors.createColors>
export type ColourWish = 'auto' | 'always' | 'never'

/** What the program is started with, as far as colour goes. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>
}

/**
 * Colours as wished; `auto` means on a terminal that can show them, unless NO_COLOR holds anything
 * (https://no-color.org). What is piped or written to a file is never coloured by `auto`.
 */
export function coloursFor(wish: ColourWish, terminal: boolean, { env }: Surroundings): Colours {
  const plain = (env.NO_COLOR ?? '') !== '' || env.TERM === 'dumb'
  return picocolors.createColors(wish === 'always' || (wish === 'auto' && terminal && !plain))
}
