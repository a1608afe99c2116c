import { constants } from 'node:fs'
import { type FileHandle, open, realpath } from 'node:fs/promises'
import { join, sep } from 'node:path'
import type { FileRead, Host } from './host.ts'
import { whyNotRead } from './node-reason.ts'
import { replace } from './node-replace.ts'

/** The computer's own files, through Node. */
export const NODE_HOST: Host = { read, readBelow, readInput, replace }

/** How often a file that changes under the reader is read again. */
const READS = 3

/**
 * Opens without waiting (a pipe nobody writes to would hold the reader for ever), then asks the open
 * file what it is, so that it cannot be swapped between the question and the reading.
 */
async function read(path: string, limit: number): Promise<FileRead> {
  try {
    const file = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0))
    try {
      return await readOpen(file, limit)
    } finally {
      await file.close()
    }
  } catch (error) {
    return whyNotRead(error)
  }
}

async function readOpen(file: FileHandle, limit: number): Promise<FileRead> {
  for (let i = 0; i < READS; i++) {
    const before = await file.stat()
    if (before.isDirectory()) return { kind: 'folder' }
    if (before.isFIFO()) return { kind: 'pipe' }
    if (before.isSocket()) return { kind: 'socket' }
    if (!before.isFile()) return { kind: 'device' }
    if (before.size > limit) return { kind: 'too big', limit }
    const bytes = await readUpTo(file, limit + 1)
    const after = await file.stat()
    const still = after.size === bytes.length && after.mtimeMs === before.mtimeMs
    if (still) return { kind: 'read', bytes }
  }
  return { kind: 'changing' }
}

/** From the start of the file to its end, but never more than `limit` bytes. */
async function readUpTo(file: FileHandle, limit: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let length = 0
  while (length < limit) {
    const chunk = new Uint8Array(Math.min(1 << 16, limit - length))
    const { bytesRead } = await file.read(chunk, 0, chunk.length, length)
    if (bytesRead === 0) break
    chunks.push(chunk.subarray(0, bytesRead))
    length += bytesRead
  }
  return Buffer.concat(chunks)
}

async function readBelow(folder: string, path: string, limit: number): Promise<FileRead> {
  try {
    const [home, place] = await Promise.all([realpath(folder), realpath(join(folder, path))])
    if (!place.startsWith(home.endsWith(sep) ? home : home + sep)) return { kind: 'outside' }
    return await read(place, limit)
  } catch (error) {
    return whyNotRead(error)
  }
}

async function readInput(limit: number): Promise<FileRead> {
  const chunks: Buffer[] = []
  let length = 0
  try {
    for await (const chunk of process.stdin) {
      chunks.push(chunk)
      length += chunk.length
      if (length > limit) return { kind: 'too big', limit }
    }
  } catch (error) {
    return whyNotRead(error)
  }
  return { kind: 'read', bytes: Buffer.concat(chunks) }
}
