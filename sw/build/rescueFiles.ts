import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Rolldown } from 'vite';
import { withPolicy } from './policy.ts';

/**
 * The page that saves the logbook when the app does not start, and its script.
 * @param folder where both are written down
 */
export async function rescueFiles(folder: string): Promise<{ page: string; script: string }> {
  const built = await build({
    configFile: false,
    root: folder,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: ['es2022', 'safari16.4'],
      rolldownOptions: { input: join(folder, 'rescue.ts'), output: { format: 'iife' } },
    },
  });
  const [script] = (built as Rolldown.RolldownOutput).output;
  const page = readFileSync(join(folder, 'rescue.html'), 'utf8').replaceAll(/\n\s+/g, '\n');
  return { page: withPolicy(page), script: script.code };
}
