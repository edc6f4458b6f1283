/** Text made safe for HTML. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)
}

/** `code` between backticks, in text that is otherwise made safe. */
export function paragraph(text: string): string {
  return `<p>${escaped(text).replace(/&#96;|`([^`]*)`/g, (_, code: string) => `<code>${code}</code>`).replaceAll('\n', '<br>')}</p>`
}

/** A page of the documentation: plain HTML, no script. */
export function htmlPage(title: string, body: string): string {
  const links = [['/docs', 'Documentation'], ['/docs/reference', 'Routes'], ['/docs/problems', 'Problems'], ['/docs/events', 'Events'], ['/docs/limits', 'Limits']]
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
<title>${escaped(title)}</title><link rel="stylesheet" href="/docs/style.css"></head><body>
<nav>${links.map(([href, text]) => `<a href="${href}">${text}</a>`).join(' ')}</nav><main><h1>${escaped(title)}</h1>${body}</main></body></html>`
}

export const STYLE = `:root{color-scheme:light dark}body{font:16px/1.5 system-ui,sans-serif;margin:0 auto;max-width:60rem;padding:1rem}
nav a{margin-right:1rem}h2{border-top:1px solid;padding-top:1rem;margin-top:2rem}h3{margin:1.5rem 0 .25rem;font-size:1rem}
code,pre{font:14px/1.4 ui-monospace,monospace}pre{overflow:auto;border:1px solid;padding:.5rem}table{border-collapse:collapse}
td,th{text-align:left;vertical-align:top;border-bottom:1px solid;padding:.25rem 1rem .25rem 0}summary{cursor:pointer}`
