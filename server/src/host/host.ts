/**
 * All that the outside world gives to a command: files, nothing else. There is no clock and no random
 * in it, because no number may depend on either. Paths are the host's own, except below a folder,
 * where they are '/'-separated everywhere.
 */
export interface Host {
  /** A file that a person named, of at most `limit` bytes. Links are followed: the person chose them. */
  read(path: string, limit: number): Promise<FileRead>
  /** A file that a text named, '/'-separated, never outside `folder`: a link that leads out is not read. */
  readBelow(folder: string, path: string, limit: number): Promise<FileRead>
  /** Everything on standard input, at most `limit` bytes. */
  readInput(limit: number): Promise<FileRead>
  /** Puts the whole of `bytes` in place of what stands at `path`, or leaves it as it was. */
  replace(path: string, bytes: Uint8Array): Promise<Replaced>
}

/** What became of reading a file; everything but `read` has its own sentence in `refusal.ts`. */
export type FileRead =
  | { readonly kind: 'read'; readonly bytes: Uint8Array }
  | { readonly kind: Unreadable }
  | { readonly kind: 'too big'; readonly limit: number }
  | { readonly kind: 'failed'; readonly reason: string }

export type Unreadable =
  | 'missing'
  | 'folder'
  | 'pipe'
  | 'device'
  | 'socket'
  | 'forbidden'
  | 'changing'
  | 'outside'
  | 'circular link'

export type Replaced =
  | { readonly kind: 'replaced' }
  /** The old file is intact and nothing lies beside it; `reason` is the end of a sentence. */
  | { readonly kind: 'failed'; readonly reason: string }

/** 5 MB: a job of a thousand rooms is a tenth of it, and a larger file is hardly a job. */
export const LARGEST_TEXT = 5_000_000
