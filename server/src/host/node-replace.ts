import {
  access,
  constants,
  type FileHandle,
  open,
  realpath,
  rename,
  rm,
  stat,
} from 'node:fs/promises'
import { dirname, join } from 'node:path'
import type { Replaced } from './host.ts'
import { codeOf, reasonFor } from './node-reason.ts'

/** What a new file may be used for, before the person's own mask. */
const NEW_FILE = 0o666

/**
 * Writes beside the target, brings that to the disk, then renames it: whoever reads sees the old file
 * or the new one, and a death in between leaves the old one. A link keeps pointing where it did.
 */
export async function replace(path: string, bytes: Uint8Array): Promise<Replaced> {
  try {
    const target = await realpath(path).catch(() => path)
    const mode = await modeOf(target)
    if (typeof mode === 'string') return { kind: 'failed', reason: mode }
    const beside = await openBeside(target, mode)
    try {
      await fill(beside.file, bytes, mode)
      await rename(beside.path, target)
    } catch (error) {
      await rm(beside.path, { force: true })
      throw error
    }
    return { kind: 'replaced' }
  } catch (error) {
    return { kind: 'failed', reason: reasonFor(error) }
  }
}

/** The mode of the file to replace, or why it cannot be replaced. A rename asks none of this itself. */
async function modeOf(target: string): Promise<number | string> {
  const old = await stat(target).catch((error) => {
    if (codeOf(error) === 'ENOENT') return null
    throw error
  })
  if (old === null) return NEW_FILE
  if (old.isDirectory()) return 'it is a folder'
  if (!old.isFile()) return 'it is no file on a disk'
  await access(target, constants.W_OK)
  return old.mode & 0o777
}

let tries = 0

/** A new file in the target's folder, under a name that no one else uses. */
async function openBeside(
  target: string,
  mode: number,
): Promise<{ readonly path: string; readonly file: FileHandle }> {
  for (;;) {
    const path = join(dirname(target), `.floorscribe-${process.pid}-${tries++}.part`)
    try {
      return { path, file: await open(path, 'wx', mode) }
    } catch (error) {
      if (codeOf(error) !== 'EEXIST') throw error
    }
  }
}

async function fill(file: FileHandle, bytes: Uint8Array, mode: number): Promise<void> {
  try {
    await file.writeFile(bytes)
    if (mode !== NEW_FILE) await file.chmod(mode)
    await file.sync()
  } finally {
    await file.close()
  }
}
