import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

/** A program that prints the ids of processes, one to a line. */
export interface Lister {
  file: string;
  args: string[];
}

/**
 * How a system lists the processes whose command line holds a text.
 * @param platform as `process.platform` says it
 * @param text part of the command line, for instance a folder with spaces
 * @returns the program to run, or undefined where `/proc` is read instead
 * @example lister('darwin', '/tmp/a b') //=> { file: 'pgrep', args: ['-f', '--', '/tmp/a b'] }
 */
export function lister(platform: string, text: string): Lister | undefined {
  if (platform === 'linux') return undefined;
  if (platform !== 'win32') return { file: 'pgrep', args: ['-f', '--', text] };
  const quoted = `'${text.replaceAll("'", "''")}'`;
  const query =
    `Get-CimInstance Win32_Process | Where-Object { $_.CommandLine -and $_.CommandLine.Contains(${quoted}) } | ` +
    'ForEach-Object { $_.ProcessId }';
  return { file: 'powershell', args: ['-NoProfile', '-Command', query] };
}

/**
 * The processes of a browser, found by its profile.
 * @param profile path of the profile's folder, which every process of the browser names in its command line
 * @returns process ids, this process not among them
 */
export function processesOf(profile: string): number[] {
  const other = lister(process.platform, profile);
  const ids = other
    ? listed(other)
    : readdirSync('/proc')
        .filter((id) => namesInProc(id, profile))
        .map(Number);
  return ids.filter((id) => id !== process.pid);
}

function listed({ file, args }: Lister): number[] {
  const out = execFileSync(file, args, { encoding: 'utf8' });
  return out.split(/\s+/).filter(Boolean).map(Number);
}

function namesInProc(id: string, text: string): boolean {
  if (!/^\d+$/.test(id)) return false;
  try {
    return readFileSync(`/proc/${id}/cmdline`, 'utf8').includes(text);
  } catch {
    // It has ended, or belongs to another user.
    return false;
  }
}
