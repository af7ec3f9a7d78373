// Builds the app and serves it on this machine, so that one command shows it working.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const build = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], {
  stdio: 'inherit',
  env: { ...process.env, NODE_ENV: 'production' },
});
if (build.status !== 0) process.exit(build.status ?? 1);
// The headers a real server should send, as the build wrote them down.
const { globalHeaders: headers } = JSON.parse(readFileSync('dist/staticwebapp.config.json', 'utf8'));
const { PORT = '4173', HOST: host = '127.0.0.1', CERT, KEY } = process.env;
// Another machine, as a phone, runs the worker over https only.
const https = CERT && KEY ? { cert: readFileSync(CERT), key: readFileSync(KEY) } : undefined;
const server = await preview({ preview: { port: Number(PORT), host, strictPort: false, headers, https } });
server.printUrls();
console.log('Open it and tap "Look at the demo". Ctrl+C stops.');
