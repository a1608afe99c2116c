/** "1 plank", "2 planks", "0 planks". */
export function counted(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? '' : 's'}`
}
