import { resolve } from 'node:path';
import { defineConfig } from 'vite';

/** Serves the gallery of controls for looking at; nothing of it is built or shipped. */
export default defineConfig({
  root: import.meta.dirname,
  publicDir: resolve(import.meta.dirname, '../../public'),
  server: { port: 4180, fs: { allow: [resolve(import.meta.dirname, '../..')] } },
});
