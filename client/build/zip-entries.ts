/** A file in a package: its path, how long it is, and how much of the package it takes. */
export interface ZipEntry {
  readonly path: string
  readonly bytes: number
  readonly packedBytes: number
}

const END = 0x06054b50
const ENTRY = 0x02014b50

/** What a zip file holds, by the list at its end (APPNOTE 4.3.12, 4.3.16). */
export function zipEntries(zip: Buffer): readonly ZipEntry[] {
  const end = lastIndexOf(zip, END)
  const entries: ZipEntry[] = []
  let at = zip.readUInt32LE(end + 16)
  for (let left = zip.readUInt16LE(end + 10); left > 0; left -= 1) {
    if (zip.readUInt32LE(at) !== ENTRY) throw new Error('the list of this zip file is broken')
    const name = at + 46
    const nameEnd = name + zip.readUInt16LE(at + 28)
    entries.push({
      path: zip.toString('utf8', name, nameEnd),
      bytes: zip.readUInt32LE(at + 24),
      packedBytes: zip.readUInt32LE(at + 20),
    })
    at = nameEnd + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32)
  }
  return entries
}

function lastIndexOf(zip: Buffer, mark: number): number {
  for (let at = zip.length - 22; at >= 0; at -= 1) if (zip.readUInt32LE(at) === mark) return at
  throw new Error('this is no zip file')
}
