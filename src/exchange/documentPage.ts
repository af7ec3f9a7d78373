import type { SheetLine } from '../documents/sheetLine.ts';

const signs: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/**
 * Text as it may stand anywhere in a page: no sign of it begins a tag, ends a value or names a sign.
 * @example escaped('<b> & "c"') //=> '&lt;b&gt; &amp; &quot;c&quot;'
 */
export const escaped = (text: string): string =>
  text
    .replaceAll(/[&<>"']/g, (sign) => signs[sign] ?? '')
    // Signs that cannot be seen, or turn the direction of writing round, would show another text than the one stored.
    .replaceAll(/(?![\t\n\r])[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');

function lineHtml(line: SheetLine): string {
  const text = escaped(line.text);
  switch (line.is) {
    case 'title':
      return `<h1>${text}</h1>`;
    case 'section':
      return `<h2>${text}</h2>`;
    case 'heading':
      return `<h3>${text}</h3>`;
    case 'caution':
      return `<p class="caution">${text}</p>`;
    case 'field':
      return `<p${line.loud ? ' class="loud"' : ''}><b>${escaped(line.label)}:</b> ${text}</p>`;
  }
}

const style =
  'body{font:1rem/1.45 sans-serif;max-width:46rem;margin:2rem auto;padding:0 1rem;color:#111;background:#fff}' +
  'h2{border-bottom:2px solid;margin-top:2rem}h3{margin:1.2rem 0 .2rem}p{margin:.15rem 0;white-space:pre-wrap;overflow-wrap:anywhere}' +
  '.loud{border-left:4px solid #b00020;padding-left:.5rem}.caution{border:2px solid;padding:.5rem;margin:1rem 0}' +
  '@media print{body{margin:0}h3{break-after:avoid}}';

/**
 * A sheet as a page of its own that any browser shows: no script, nothing loaded, every text escaped.
 * @example documentPage([{ is: 'title', text: 'Magpie, as built' }]).includes('<h1>Magpie, as built</h1>') //=> true
 */
export function documentPage(lines: readonly SheetLine[]): string {
  const [first] = lines;
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width">',
    `<title>${escaped(first?.text ?? 'Build sheet')}</title>`,
    `<style>${style}</style>`,
    ...lines.map(lineHtml),
    '</html>',
    '',
  ].join('\n');
}
