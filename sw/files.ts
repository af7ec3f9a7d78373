/** Put in by the build: the shipped files by path, each with the beginning of its SHA-256 in base64url. */
declare const __FILES__: Record<string, string>;
declare const __HEADERS__: Record<string, string>;

/** The page goes by this path: some servers send its file name on to it, and a page that was sent on starts nothing. */
export const PAGE = '/';
const PAGE_FILE = '/index.html';

const files = __FILES__;
export const paths = Object.keys(files);
export const isShipped = (path: string) => path in files;

const KINDS: Record<string, string> = {
  html: 'text/html;charset=utf-8',
  js: 'text/javascript;charset=utf-8',
  webmanifest: 'application/manifest+json',
  woff2: 'font/woff2',
  png: 'image/png',
  webp: 'image/webp',
  txt: 'text/plain;charset=utf-8',
};

/** An answer with the headers that a page of this app is served with, whatever the server itself says. */
export function answerWith(body: BodyInit, path: string, status = 200): Response {
  const kind = KINDS[(path === PAGE ? PAGE_FILE : path).split('.').at(-1) ?? ''];
  return new Response(body, { status, headers: { ...__HEADERS__, ...(kind && { 'content-type': kind }) } });
}

async function isWhole(path: string, bytes: ArrayBuffer): Promise<boolean> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const text = btoa(String.fromCharCode(...hash))
    .replaceAll('+', '-')
    .replaceAll('/', '_');
  return text.startsWith(files[path] ?? ' ');
}

/** The file as it was built, out of what an answer holds; nothing where it holds anything else. */
export async function wholeFile(path: string, answer: Response | undefined): Promise<Response | undefined> {
  if (!answer?.ok) return undefined;
  const bytes = await answer.arrayBuffer();
  return (await isWhole(path, bytes)) ? answerWith(bytes, path) : undefined;
}

/**
 * Fetches a shipped file past the browser's own cache. A server may send the page on to its file name; nothing else
 * is followed, so that no request leaves the origin.
 * @throws when the server has no such file, or one with other bytes
 */
export async function fetchFile(path: string): Promise<Response> {
  for (const address of path === PAGE ? [PAGE, PAGE_FILE] : [path]) {
    const answer = await fetch(address, { cache: 'reload', redirect: 'error' }).catch(() => undefined);
    const whole = await wholeFile(path, answer);
    if (whole) return whole;
  }
  throw new Error(`${path} is not as this version was built`);
}
