/** Always asked for anew: the worker keeps the files, and a browser that kept one of its own would mix two builds. */
const CACHING = { 'Cache-Control': 'no-cache' };

/** Kinds that older servers do not know. */
const KINDS = { '.webmanifest': 'application/manifest+json', '.woff2': 'font/woff2', '.webp': 'image/webp' };

const json = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;
const quoted = (value: string) => `"${value.replaceAll('"', '\\"')}"`;

/**
 * The headers as the usual servers read them, by the name of the file they read.
 * @param wanted what is said with every file
 * @see _headers: Netlify and Cloudflare Pages; .htaccess: Apache's mod_headers; nginx.conf: nginx's add_header;
 *   vercel.json and staticwebapp.config.json: the two hosts of those names
 */
export function hostFiles(wanted: Record<string, string>): Record<string, string> {
  const headers = Object.entries({ ...wanted, ...CACHING });
  return {
    _headers: `/*\n${headers.map(([name, value]) => `  ${name}: ${value}\n`).join('')}`,
    '.htaccess': [
      ...Object.entries(KINDS).map(([end, kind]) => `AddType ${kind} ${end}`),
      '<IfModule mod_headers.c>',
      ...headers.map(([name, value]) => `  Header always set ${name} ${quoted(value)}`),
      '</IfModule>',
      '',
    ].join('\n'),
    'nginx.conf': headers.map(([name, value]) => `add_header ${name} ${quoted(value)} always;\n`).join(''),
    'vercel.json': json({
      headers: [{ source: '/(.*)', headers: headers.map(([key, value]) => ({ key, value })) }],
    }),
    'staticwebapp.config.json': json({ globalHeaders: Object.fromEntries(headers), mimeTypes: KINDS }),
  };
}
