import fs, { type FileHandle } from 'node:fs/promises'
import { syncBuiltinESMExports } from 'node:module'

/** What is done before a step of a file's life: it may throw, or change the file. */
export type Before = (step: string, path: string) => void

/**
 * Lets a test in between the program and the disk: `before` is called before each opening and renaming,
 * and before each call of an open file. Gives back what undoes it.
 */
export function comeBetween(before: Before): () => void {
  const { open, rename } = fs
  fs.open = async (...args) => {
    const path = String(args[0])
    before('open', path)
    return watchedFile(await open(...args), path, before)
  }
  fs.rename = async (...args) => {
    before('rename', String(args[1]))
    return rename(...args)
  }
  syncBuiltinESMExports()
  return () => {
    Object.assign(fs, { open, rename })
    syncBuiltinESMExports()
  }
}

function watchedFile(file: FileHandle, path: string, before: Before): FileHandle {
  return new Proxy(file, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name)
      if (typeof value !== 'function') return value
      return (...given: unknown[]) => {
        before(String(name), path)
        return value.apply(target, given)
      }
    },
  })
}

/** An error as the system gives it. */
export function fault(code: string): Error {
  return Object.assign(new Error(code), { code })
}
