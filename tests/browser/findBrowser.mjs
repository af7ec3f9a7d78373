import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { browserPlaces } from './browserPlaces.mjs';

function installed() {
  return browserPlaces(process.platform, process.env, homedir()).find((path) => existsSync(path));
}

/**
 * The browser the product is tested in: what the environment names, else one that is installed, else, on a
 * Debian-like system and as root, Debian's own package.
 * @param {{ install: boolean }} options whether it may be installed
 * @returns {{ path?: string, why?: string }}
 */
export function findBrowser({ install }) {
  const found = installed();
  if (found) return { path: found };
  const debian = existsSync('/etc/debian_version');
  if (install && debian && process.getuid?.() === 0) {
    console.log('No Chromium found; installing the chromium package.');
    const quiet = {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    };
    spawnSync('apt-get', ['update'], quiet);
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quiet);
    const now = installed();
    if (now) return { path: now };
  }
  return {
    why: debian
      ? 'no Chromium found. Install it with: apt-get install -y chromium. Or set CHROME_PATH.'
      : 'no Chromium found. Install Chromium or Chrome, or set CHROME_PATH to its program file.',
  };
}
