/**
 * Text as it may be shown anywhere: characters that no eye can see, or that turn the order of
 * others round, are spelt out (`‹U+202E›`). A name can then hide nothing in a drawing, a terminal or
 * a file. Line ends and tabs count as unseen: a name has one line.
 */
export function visible(text: string): string {
  if (PLAIN.test(text)) return text
  let shown = ''
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0
    shown += isUnseen(code) ? `‹U+${hexadecimal(code)}›` : character
  }
  return shown
}

/** Nearly every text is plain, and most are asked about often. */
const PLAIN = /^[ -~]*$/

/** First and last code points of what is not shown as it is, by rising code. */
const UNSEEN: readonly (readonly [number, number])[] = [
  [0x00, 0x1f], // control characters, escape among them
  [0x7f, 0x9f],
  [0xad, 0xad], // soft hyphen
  [0x034f, 0x034f],
  [0x061c, 0x061c], // Arabic letter mark
  [0x115f, 0x1160], // fillers, here and below
  [0x17b4, 0x17b5],
  [0x180b, 0x180f],
  [0x200b, 0x200f], // zero-width characters and direction marks
  [0x2028, 0x202e], // line and paragraph separators, direction overrides
  [0x2060, 0x206f],
  [0x3164, 0x3164],
  [0xd800, 0xdfff], // half of a pair alone
  [0xfdd0, 0xfdef], // never characters
  [0xfeff, 0xfeff],
  [0xffa0, 0xffa0],
  [0xfff0, 0xfffb],
  [0xfffe, 0xffff],
  [0xe0000, 0xe0fff], // tags
]

function isUnseen(code: number): boolean {
  return UNSEEN.some(([first, last]) => code >= first && code <= last)
}

function hexadecimal(code: number): string {
  return code.toString(16).toUpperCase().padStart(4, '0')
}
