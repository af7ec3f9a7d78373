import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';

/**
 * A module of the bench built as the product is built, as one script that leaves its exports under a global name.
 * @param {string} entry path from the top of the repository
 * @param {string} name of the global
 * @returns {Promise<string>} the script
 */
export async function pageScript(entry, name) {
  const scratch = mkdtempSync(join(tmpdir(), 'pinchbolt-bench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      build: {
        outDir: scratch,
        minify: true,
        target: 'es2022',
        lib: { entry, formats: ['iife'], name, fileName: () => 'page.js' },
      },
    });
    return `${readFileSync(join(scratch, 'page.js'), 'utf8')};globalThis.${name} = ${name};`;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
