import { expect, test } from 'vitest';
import { ofSecondCopy } from '../../../../src/exchange/copy/ofSecondCopy.ts';
import { archiveOf, MADE_AT, opened, photoOf, whole } from '../aCopy.ts';
import { allEntries } from '../entriesOfEveryKind.ts';

test('[K1] an archive of the second copy gives back its entries and its whole photos', async () => {
  const held = {
    entries: allEntries,
    photos: [1, 2, 3],
    photo: async (one: number) => (one === 2 ? undefined : photoOf(one)),
  };
  const copy = await opened(await archiveOf(ofSecondCopy(held, MADE_AT)));
  expect(await whole(copy)).toEqual({ entries: allEntries, photos: [photoOf(1), photoOf(3)] });
});

test('[K1] a second copy that holds nothing gives an archive that holds nothing', async () => {
  const held = { entries: [], photos: [], photo: async () => undefined };
  const copy = await opened(await archiveOf(ofSecondCopy(held, MADE_AT)));
  expect(await whole(copy)).toEqual({ entries: [], photos: [] });
});
