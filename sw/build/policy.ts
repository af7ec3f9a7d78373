import { createHash } from 'node:crypto';

/** Names of the two places that may name a script: the loader of the page, and what starts workers. */
export const SCRIPT_POLICIES = ['pinchbolt-scripts', 'pinchbolt-workers'];

/** The hash by which a policy allows one sheet that stands in a page: CSP level 3, hash-source. */
export function hashOf(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

/**
 * The content policy: files of the own origin and nothing else, no script in the page, no text that becomes a
 * script or a page. Pictures may also be those that are kept in the logbook or stand in the sheet.
 * @param sheets texts of the sheets that stand in the pages
 */
export function contentPolicy(sheets: readonly string[]): string {
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' ${sheets.map(hashOf).join(' ')}`,
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    `trusted-types ${SCRIPT_POLICIES.join(' ')}`,
  ].join('; ');
}

/** What the app never asks the phone for. */
const REFUSED = [
  ...['accelerometer', 'bluetooth', 'browsing-topics', 'display-capture', 'encrypted-media', 'geolocation'],
  ...['gyroscope', 'hid', 'identity-credentials-get', 'magnetometer', 'midi', 'payment'],
  ...['publickey-credentials-get', 'serial', 'usb', 'xr-spatial-tracking'],
];
/** What it may ask for, itself. */
const OWN = ['camera', 'microphone', 'screen-wake-lock', 'web-share'];

/**
 * What a server should say with every file, beside the kind of the file.
 * @param policy the content policy of the page
 */
export function headersFor(policy: string): Record<string, string> {
  return {
    // A page cannot say by itself who may frame it.
    'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
    'Cross-Origin-Embedder-Policy': 'require-corp',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Permissions-Policy': [
      ...REFUSED.map((name) => `${name}=()`),
      ...OWN.map((name) => `${name}=(self)`),
    ].join(', '),
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
  };
}

/** The sheets that stand in a page. */
export function sheetsOf(page: string): string[] {
  return [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, sheet = '']) => sheet);
}

/** A page that carries its own policy, for servers that set none: it stands in place of an empty one. */
export function withPolicy(page: string): string {
  const empty = /(<meta\s+http-equiv="Content-Security-Policy"\s+content=")(")/;
  if (!empty.test(page)) throw new Error('the page has no place for its policy');
  return page.replace(empty, (_all, before, after) => `${before}${contentPolicy(sheetsOf(page))}${after}`);
}

/** The same page for the worker, which sends the policy along as a header. */
export const withoutPolicy = (page: string) =>
  page.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, '');
