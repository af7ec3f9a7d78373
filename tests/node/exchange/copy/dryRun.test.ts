import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { dryRun, type HeldAlready } from '../../../../src/exchange/copy/dryRun.ts';
import type { Photo } from '../../../../src/journal/commands.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { archiveOf, content, opened, photoOf } from '../aCopy.ts';
import { allEntries, idOf } from '../entriesOfEveryKind.ts';

const sum = ({ buf }: Photo): string => createHash('sha256').update(new Uint8Array(buf)).digest('hex');

/** A logbook that holds these. */
const holding = (entries: readonly Entry[], photos: readonly Photo[] = []): HeldAlready => ({
  entries: async (ids) =>
    new Map(entries.filter(({ id }) => ids.includes(id)).map((entry) => [entry.id, entry])),
  photos: async (ids) =>
    new Map(
      photos.filter(({ photoId }) => ids.includes(photoId)).map((photo) => [photo.photoId, sum(photo)]),
    ),
});

const first = allEntries.slice(0, 10);

describe('a dry run', () => {
  test('into an empty logbook: everything would be added', async () => {
    const would = await dryRun(await opened(await archiveOf()), holding([]));
    expect(would).toEqual({
      newEntries: allEntries.length,
      knownEntries: 0,
      newPhotos: 2,
      knownPhotos: 0,
      newBikes: ['Magpie'],
      happened: { firstMs: allEntries[0]?.happenedAtMs, lastMs: allEntries.at(-1)?.happenedAtMs },
    });
  });

  test('into a logbook that holds some of it: the rest would be added', async () => {
    const would = await dryRun(await opened(await archiveOf()), holding(first, [photoOf(1)]));
    expect(would).toMatchObject({
      newEntries: allEntries.length - 10,
      knownEntries: 10,
      newPhotos: 1,
      knownPhotos: 1,
      newBikes: [],
    });
  });

  test('a second time: nothing would be added', async () => {
    const known = holding(allEntries, [photoOf(1), photoOf(2)]);
    const would = await dryRun(await opened(await archiveOf()), known);
    expect(would).toMatchObject({ newEntries: 0, newPhotos: 0, newBikes: [] });
    expect(would).not.toHaveProperty('happened');
  });

  test('an entry that says something else here is refused', async () => {
    const other = { ...first[3], zone: 'Asia/Kolkata' } as Entry;
    const refused = { refused: 'same-id-other-content', about: other.id };
    expect(await dryRun(await opened(await archiveOf()), holding([other]))).toEqual(refused);
  });

  test('a photo that shows something else here is refused', async () => {
    const other = { ...photoOf(3), photoId: 'ph1' };
    const refused = { refused: 'same-photo-other-picture', about: 'ph1' };
    expect(await dryRun(await opened(await archiveOf()), holding([], [other]))).toEqual(refused);
  });

  test.each([
    ['what its kind of entry can hold', { words: 'rattles' }, true],
    ['what its kind of entry cannot hold', { km: 5 }, false],
    ['what is fixed', { type: 'ride-logged' }, false],
  ])('a correction of an entry that only the logbook holds, putting %s', async (_name, becomes, allowed) => {
    const note = { ...allEntries.find(({ type }) => type === 'note-added'), id: idOf(900) } as Entry;
    const correction = {
      ...allEntries.find(({ type }) => type === 'entry-corrected'),
      ...{ id: idOf(901), corrects: idOf(900), becomes },
    } as Entry;
    const copy = await opened(await archiveOf(content([correction], [])));
    expect(copy.astray).toHaveLength(1);
    const would = await dryRun(copy, holding([note]));
    expect('refused' in would ? would.refused : 'added').toBe(allowed ? 'added' : 'correction-astray');
  });

  test('cancelled: the reason comes back', async () => {
    const reason = new Error('changed my mind');
    const copy = await opened(await archiveOf());
    await expect(dryRun(copy, holding([]), { signal: AbortSignal.abort(reason) })).rejects.toBe(reason);
  });
});
