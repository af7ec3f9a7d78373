import { posix, win32 } from 'node:path';

const MAC_APPS = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
const WINDOWS_PROGRAMS = [
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Chromium', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];
const LINUX_PROGRAMS = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
];

/**
 * Where a browser of the Chromium family usually is, the named one first.
 * @param {string} platform as `process.platform` says it
 * @param {Record<string, string | undefined>} env the environment; `CHROME_PATH` names a program file
 * @param {string} home the user's own folder
 * @returns {string[]} paths to try in this order
 * @example browserPlaces('linux', { CHROME_PATH: '/opt/c/chrome', PATH: '' }, '/home/a')[0] //=> '/opt/c/chrome'
 */
export function browserPlaces(platform, env, home) {
  const named = env.CHROME_PATH ? [unquoted(env.CHROME_PATH)] : [];
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);
    return [
      ...named,
      ...WINDOWS_PROGRAMS.flatMap((program) => roots.map((root) => win32.join(root, ...program))),
    ];
  }
  if (platform === 'darwin') {
    const roots = ['/Applications', posix.join(home, 'Applications')];
    return [
      ...named,
      ...MAC_APPS.flatMap((app) => roots.map((root) => `${root}/${app}.app/Contents/MacOS/${app}`)),
    ];
  }
  const roots = [...new Set(['/usr/bin', '/snap/bin', ...(env.PATH ?? '').split(':').filter(Boolean)])];
  return [...named, ...roots.flatMap((root) => LINUX_PROGRAMS.map((program) => posix.join(root, program)))];
}

/** A path with spaces is often set with its quotes. */
function unquoted(path) {
  return path.replace(/^(["'])(.*)\1$/, '$2');
}
