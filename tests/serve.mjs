// Builds the app and serves it on this machine, so that one command shows it working.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const build = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], {
  stdio: 'inherit',
  env: { ...process.env, NODE_ENV: 'production' },
});
if (build.status !== 0) process.exit(build.status ?? 1);
const port = Number(process.env.PORT ?? 4173);
const server = await preview({ preview: { port, host: process.env.HOST ?? '127.0.0.1', strictPort: false } });
server.printUrls();
console.log('Open it and tap "Look at the demo". Ctrl+C stops.');
