import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { pageScripts } from './sw/build/chunks.ts';
import { classicScripts } from './sw/build/classicScripts.ts';
import { precacheList } from './sw/build/precache.ts';

// Absolute, because the page's root is src and tests live beside it.
const top = fileURLToPath(new URL('.', import.meta.url));

/** Large files first, as Vitest has it; but the story of the whole job, long in a short file, before them. */
class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const story = ({ moduleId }: TestSpecification) => moduleId.endsWith('/job.test.ts');
    const sorted = await super.sort(files);
    return [...sorted.filter(story), ...sorted.filter((file) => !story(file))];
  }
}

export default defineConfig({
  root: 'src',
  publicDir: '../public',
  plugins: [classicScripts('prelude.ts'), precacheList({ sw: 'sw/index.ts' })],
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: ['es2022', 'safari16.4'],
    modulePreload: false,
    // One sheet: all of it together is smaller than the trips for its pieces are long.
    cssCodeSplit: false,
    // A picture within the sheet would hold up the first screen.
    assetsInlineLimit: 0,
    // Short names: the worker's list carries each, and compares every file by a hash of its own.
    rolldownOptions: {
      output: { codeSplitting: pageScripts(`${top}src`), chunkFileNames: 'assets/[name]-[hash:7].js' },
    },
  },
  server: { port: 4173 },
  preview: { port: 4173 },
  test: {
    sequence: { sequencer: LongFirst },
    projects: [
      {
        extends: true,
        root: top,
        test: {
          name: 'node',
          setupFiles: ['tests/node/steadyDice.ts'],
          // A loaded machine is slow; what hangs is still noticed.
          testTimeout: 30_000,
          include: ['tests/node/**/*.test.ts'],
          exclude: ['tests/node/checks/**'],
          pool: 'forks',
          // Left to itself Vitest keeps one core free.
          maxWorkers: availableParallelism(),
        },
      },
      {
        extends: true,
        root: top,
        test: { name: 'checks', include: ['tests/node/checks/**/*.test.ts'], pool: 'forks' },
      },
      {
        extends: true,
        root: top,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/build.ts'],
          // Most of their time is spent waiting; two at once fill two cores, and three gain nothing.
          maxWorkers: 2,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          pool: 'forks',
        },
      },
      {
        extends: true,
        root: top,
        test: {
          name: 'deploys',
          include: ['tests/deploys/**/*.test.ts'],
          globalSetup: ['tests/browser/build.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          pool: 'forks',
        },
      },
    ],
  },
});
