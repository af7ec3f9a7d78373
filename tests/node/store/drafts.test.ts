import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { openDrafts } from '../../../src/store/drafts.ts';

describe('drafts', () => {
  test('what was kept last is there when the next page opens, what was let go is not', async () => {
    const first = await openDrafts('one');
    expect([...first.texts]).toEqual([]);
    first.keep('bench:s1', '{"tight":1}');
    first.keep('bench:s1', '{"tight":2}');
    first.keep('part:new', '{"name":"Bell"}');
    first.keep('part:new', undefined);
    await expect
      .poll(async () => [...(await openDrafts('one')).texts])
      .toEqual([['bench:s1', '{"tight":2}']]);
  });

  test('a place that can no longer be written fails no form', async () => {
    const drafts = await openDrafts('two');
    const unclonable = (() => {}) as unknown as string;
    expect(() => drafts.keep('k', unclonable)).not.toThrow();
    drafts.keep('k', 'text');
    await expect.poll(async () => (await openDrafts('two')).texts.get('k')).toBe('text');
  });
});
