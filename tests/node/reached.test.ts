import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { unreachedExports } from '../fixtures/reach.ts';

const top = fileURLToPath(new URL('../..', import.meta.url));

/** What is left over, by its subject; a subject leaves the list when all of it is shown or deleted. */
const waiting: Record<string, readonly RegExp[]> = {
  // The screen for files is being built; its reading and writing landed first.
  files: [/^src\/exchange\//, /^src\/words\/fileRefusals\.ts /],
};

const begun = [
  ...['src/main.tsx', 'src/mirror/worker.ts', 'sw/index.ts', 'sw/rescue/secondCopy.ts'],
  ...['src/prelude.ts', 'src/linker.ts'],
];
const left = unreachedExports(top, begun);

test('the product reaches every export, but for what waits for its page', () => {
  const allowed = Object.values(waiting).flat();
  expect(left.filter((line) => !allowed.some((pattern) => pattern.test(line)))).toEqual([]);
});

test('what is waited for is still unreached: a subject that is built leaves the list', () => {
  const built = Object.entries(waiting).filter(
    ([, patterns]) => !left.some((line) => patterns.some((pattern) => pattern.test(line))),
  );
  expect(built.map(([subject]) => subject)).toEqual([]);
});
