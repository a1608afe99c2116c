/** What the page is made of. All three are the extension's own; nothing of a job's text is among them. */
export interface PageParts {
  /** Fresh for every page, from a source of true chance: only what carries it runs or styles. */
  readonly nonce: string
  readonly scriptUri: string
  readonly styleUri: string
}

/**
 * The page before anything is drawn on it. Its policy lets one script and one style sheet in by their
 * nonce and nothing else: no request, no picture, no frame, no form, no other base for its addresses.
 */
export function pageHtml({ nonce, scriptUri, styleUri }: PageParts): string {
  const policy = [
    "default-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "img-src 'none'",
    "connect-src 'none'",
    `style-src 'nonce-${nonce}'`,
    `script-src 'nonce-${nonce}'`,
  ].join('; ')
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Floor drawing</title>
<link rel="stylesheet" nonce="${escaped(nonce)}" href="${escaped(styleUri)}">
</head>
<body>
<script type="module" nonce="${escaped(nonce)}" src="${escaped(scriptUri)}"></script>
</body>
</html>
`
}

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`)
}
