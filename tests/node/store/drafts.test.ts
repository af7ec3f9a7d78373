import 'fake-indexeddb/auto';
import { openDB } from 'idb';
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

  test('one draft that cannot be read keeps none of the others back', async () => {
    const drafts = await openDrafts('four');
    drafts.keep('bad', '{"note":"torn"}');
    drafts.keep('bench:s1', '{"tight":2}');
    await expect.poll(async () => (await openDrafts('four')).texts.size).toBe(2);
    const { get, getAll } = IDBObjectStore.prototype;
    // A browser refuses the whole reading when one value cannot be brought back.
    IDBObjectStore.prototype.getAll = () => {
      throw new DOMException('one value cannot be read', 'DataError');
    };
    IDBObjectStore.prototype.get = function (this: IDBObjectStore, key: IDBValidKey | IDBKeyRange) {
      if (key === 'bad') throw new DOMException('it cannot be read', 'DataError');
      return get.call(this, key);
    };
    try {
      expect([...(await openDrafts('four')).texts]).toEqual([['bench:s1', '{"tight":2}']]);
    } finally {
      Object.assign(IDBObjectStore.prototype, { get, getAll });
    }
  });

  test('what is not shaped like a draft is left aside', async () => {
    await openDrafts('five');
    const db = await openDB('five');
    await db.put('drafts', { key: 'photos of part:new', photos: [{ photoId: 'ph' }] });
    await db.put('drafts', { key: 'photos of part:p1', photos: null });
    await db.put('drafts', { key: 'note:b', text: 5 });
    await db.put('drafts', { key: 'bench:s1', text: '{}' });
    db.close();
    const { texts, photos } = await openDrafts('five');
    expect([...texts.keys(), ...photos.keys()]).toEqual(['bench:s1']);
  });

  test('empty words let the words go and keep the photos', async () => {
    const drafts = await openDrafts('six');
    drafts.keep('part:new', '{"name":"Bell"}');
    drafts.keep('part:new', [
      { photoId: 'ph', type: 'image/jpeg', widthPx: 1, heightPx: 1, buf: new ArrayBuffer(1) },
    ]);
    drafts.keep('part:new', '');
    await expect.poll(async () => (await openDrafts('six')).texts.size).toBe(0);
    expect([...(await openDrafts('six')).photos.keys()]).toEqual(['part:new']);
  });
});
