import { execFileSync } from 'node:child_process';

/** Builds the product once for all browser tests, in a process of its own: a test run would build it as for testing. */
export default function build(): void {
  execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], {
    env: { ...process.env, NODE_ENV: 'production', VITEST: '' },
    stdio: 'inherit',
  });
}
