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

  test('photos lie beside the words of their form, byte for byte, and go when the form is let go', async () => {
    const photo = { photoId: 'ph1', type: 'image/jpeg', widthPx: 2, heightPx: 1 };
    const buf = new Uint8Array([255, 216, 7]).buffer;
    const first = await openDrafts('three');
    first.keep('part:new', '{"name":"Bell"}');
    first.keep('part:new', [{ ...photo, buf }]);
    first.keep('part:new', '{"name":"Brass bell"}');
    first.keep('change:p1', [{ ...photo, buf }]);
    first.keep('change:p1', []);
    const again = async () => openDrafts('three');
    await expect.poll(async () => [...(await again()).photos.keys()]).toEqual(['part:new']);
    const { texts, photos } = await again();
    expect([...texts]).toEqual([['part:new', '{"name":"Brass bell"}']]);
    const [kept] = photos.get('part:new') ?? [];
    expect(kept).toMatchObject(photo);
    expect([...new Uint8Array(kept?.buf ?? new ArrayBuffer(0))]).toEqual([255, 216, 7]);
    first.keep('part:new', undefined);
    await expect.poll(async () => (await again()).photos.size + (await again()).texts.size).toBe(0);
  });

  test('a place that can no longer be written fails no form', async () => {
    const drafts = await openDrafts('two');
    const unclonable = (() => {}) as unknown as string;
    expect(() => drafts.keep('k', unclonable)).not.toThrow();
    drafts.keep('k', 'text');
    await expect.poll(async () => (await openDrafts('two')).texts.get('k')).toBe('text');
  });
});
