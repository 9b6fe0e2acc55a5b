/** The little Markdown that answers use, as HTML. */
export function htmlOf(text: string): string {
  const blocks = text.split(/^```$/m).map((part, at) => {
    const lines = part.replace(/^\n|\n$/g, '');
    if (lines === '') return '';
    return at % 2 === 1 ? `<pre>${safe(lines)}</pre>` : lines.split('\n').map(lineOf).join('');
  });
  return blocks.join('');
}

function lineOf(line: string): string {
  const [, heading] = /^### (.*)$/.exec(line) ?? [];
  if (heading !== undefined) return `<h3>${inline(heading)}</h3>`;
  const [, small] = /^-# (.*)$/.exec(line) ?? [];
  if (small !== undefined) return `<p class="small">${inline(small)}</p>`;
  const [, mark, item] = /^(-|\d+\.) (.*)$/.exec(line) ?? [];
  if (mark !== undefined && item !== undefined)
    return `<p class="item"><span>${mark === '-' ? '•' : mark}</span>${inline(item)}</p>`;
  return `<p>${inline(line)}</p>`;
}

function inline(text: string): string {
  return safe(text)
    .replace(/\*\*(.+?)\*\*/g, '<b>$1</b>')
    .replace(/&lt;t:(\d+):[A-Z]&gt;/gi, (_, seconds: string) =>
      new Date(Number(seconds) * 1000).toUTCString(),
    )
    .replace(/\\([^\w\s])/g, '$1');
}

function safe(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
