import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Rolldown } from 'vite';
import { withPolicy } from './policy.ts';

/** The page that saves the logbook when the app does not start. */
export interface RescueFiles {
  page: string;
  /** Its own script, which the worker carries in itself. */
  script: string;
  /** The script that saves the second copy; too long for the worker, so a file beside the others. */
  secondCopy: string;
}

/** One script that needs no other file. */
async function alone(source: string): Promise<string> {
  const built = await build({
    configFile: false,
    root: join(source, '..'),
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: ['es2022', 'safari16.4'],
      rolldownOptions: { input: source, output: { format: 'iife' } },
    },
  });
  const [script] = (built as Rolldown.RolldownOutput).output;
  return script.code;
}

/** @param folder where page and scripts are written down */
export async function rescueFiles(folder: string): Promise<RescueFiles> {
  const page = readFileSync(join(folder, 'rescue.html'), 'utf8').replaceAll(/\n\s+/g, '\n');
  return {
    page: withPolicy(page),
    script: await alone(join(folder, 'rescue.ts')),
    secondCopy: await alone(join(folder, 'secondCopy.ts')),
  };
}
