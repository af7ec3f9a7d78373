import { spawn } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { lister, processesOf } from '../../browser/processesOf.ts';

describe('lister', () => {
  test('macOS asks pgrep, with the folder as one argument', () => {
    expect(lister('darwin', '/tmp/a b')).toEqual({ file: 'pgrep', args: ['-f', '--', '/tmp/a b'] });
  });

  test('Windows asks PowerShell for the text as it stands, a quote in it doubled', () => {
    const { file, args } = lister('win32', "C:\\Users\\O'Neil B\\Temp\\phone") ?? { file: '', args: [] };
    expect(file).toBe('powershell');
    expect(args.at(-1)).toContain("Contains('C:\\Users\\O''Neil B\\Temp\\phone')");
  });

  test('Linux reads /proc', () => {
    expect(lister('linux', '/tmp/x')).toBeUndefined();
  });
});

test('processesOf finds a process by a text of its command line', async () => {
  const text = 'a profile of the test, with spaces';
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)', text], { stdio: 'ignore' });
  try {
    await new Promise((ready) => child.once('spawn', ready));
    expect(processesOf(text)).toContain(child.pid);
  } finally {
    child.kill('SIGKILL');
  }
});
