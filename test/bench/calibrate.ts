import { medianOfFive } from './median.ts'

/**
 * Milliseconds for a fixed piece of work, so that times of two machines, or of one machine on two
 * days, can be held against each other: the same whole numbers stirred in a typed array.
 */
export function calibration(): number {
  return medianOfFive(() => {
    const cells = new Uint32Array(1 << 16)
    let state = 1
    for (let i = 0; i < 8_000_000; i++) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
      cells[state >>> 16] = (cells[state >>> 16]! + i) >>> 0
    }
    return cells[7]
  })
}
