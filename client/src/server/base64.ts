/** How many bytes become characters in one call: engines limit how many arguments a call takes. */
const CHUNK = 8_192

/** Bytes as base64, alike on Node and in a browser. */
export function base64(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += CHUNK)
    text += String.fromCharCode(...bytes.subarray(i, i + CHUNK))
  return btoa(text)
}
