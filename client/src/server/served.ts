/** Documents of our language under one scheme of addresses. */
export interface Served {
  readonly language: string
  readonly scheme: string
}

/** Where jobs are written in any editor. What is only looked at, such as `git:`, is not among them. */
const ALWAYS = ['file', 'untitled', 'vscode-remote', 'vscode-vfs', 'vscode-test-web', 'memfs']

/**
 * The documents that the server is told of: those that someone can write. An old version that is only
 * shown beside the new one gets no messages. `writable` says it of a scheme, as far as is known.
 */
export function servedDocuments(
  schemes: Iterable<string>,
  writable: (scheme: string) => boolean | undefined,
): Served[] {
  const others = [...schemes].filter((scheme) => writable(scheme) === true)
  return [...new Set([...ALWAYS, ...others])].map((scheme) => ({ language: 'floor', scheme }))
}
