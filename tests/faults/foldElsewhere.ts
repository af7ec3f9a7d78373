import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { Stored, StoredRow } from './stored.ts';

/** A fold that runs in a process of its own. */
export interface FoldElsewhere {
  rowsOf(lines: Stored['lines']): Promise<StoredRow[]>;
  stop(): void;
}

type Answer = { at: number; rows: string } | { at: number; failed: string };

/** Builds the fold as one file and starts the process that runs it. */
export async function startFold(): Promise<FoldElsewhere> {
  const scratch = mkdtempSync(join(tmpdir(), 'pinchbolt-fold-'));
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: scratch,
      minify: false,
      target: 'node20',
      lib: { entry: 'tests/faults/freshFold.ts', formats: ['es'], fileName: () => 'fold.mjs' },
    },
  });
  const child = fork(fileURLToPath(new URL('./foldProcess.mjs', import.meta.url)), [
    join(scratch, 'fold.mjs'),
  ]);
  const waiting = new Map<number, { done(rows: StoredRow[]): void; failed(why: Error): void }>();
  let asked = 0;
  child.on('message', (answer: Answer) => {
    const asker = waiting.get(answer.at);
    waiting.delete(answer.at);
    if ('rows' in answer) asker?.done(JSON.parse(answer.rows) as StoredRow[]);
    else asker?.failed(new Error(answer.failed));
  });
  child.on('exit', () => {
    for (const { failed } of waiting.values()) failed(new Error('the process of the fold ended'));
  });
  return {
    rowsOf(lines) {
      asked += 1;
      const at = asked;
      return new Promise((done, failed) => {
        waiting.set(at, { done, failed });
        child.send({ at, lines: JSON.stringify(lines) });
      });
    },
    stop() {
      child.kill();
      rmSync(scratch, { recursive: true, force: true });
    },
  };
}
