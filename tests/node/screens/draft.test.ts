import { expect, test } from 'vitest';
import {
  type DraftPlace,
  forgetDraft,
  hasDrafts,
  keepDraftsIn,
  madePhotos,
  photoBeingMade,
  photosOf,
  putPhotos,
} from '../../../src/screens/draft.ts';

const photo = (photoId: string) => ({
  ...{ photoId, type: 'image/jpeg', widthPx: 1, heightPx: 1 },
  buf: new ArrayBuffer(1),
});

test('photos of a form are mirrored as they are taken, hold an update back, and go with the form', () => {
  const kept: [string, unknown][] = [];
  const place: DraftPlace = {
    texts: new Map(),
    photos: new Map([['part:new', [photo('earlier')]]]),
    keep: (key, value) => void kept.push([key, value]),
  };
  expect(hasDrafts()).toBe(false);
  keepDraftsIn(place);
  expect(hasDrafts()).toBe(true);
  expect(photosOf('part:new').map(({ photoId }) => photoId)).toEqual(['earlier']);
  const both = [...photosOf('part:new'), photo('now')];
  putPhotos('part:new', both);
  expect(kept).toEqual([['part:new', both]]);
  forgetDraft('part:new');
  expect(kept.at(-1)).toEqual(['part:new', undefined]);
  expect(photosOf('part:new')).toEqual([]);
  expect(hasDrafts()).toBe(false);
  // Nothing there, nothing to let go: the place is not asked for it.
  putPhotos('part:new', []);
  forgetDraft('part:new');
  expect(kept).toHaveLength(2);
});

test('a place for drafts that answers late takes what was typed meanwhile, and gives what it has', () => {
  const kept: [string, unknown][] = [];
  putPhotos('note:b1', [photo('now')]);
  keepDraftsIn({
    texts: new Map([['ride:b1', '{"km":"9"}']]),
    photos: new Map([['note:b1', [photo('earlier')]]]),
    keep: (key, value) => void kept.push([key, value]),
  });
  expect(photosOf('note:b1').map(({ photoId }) => photoId)).toEqual(['now']);
  expect(kept).toEqual([['note:b1', [photo('now')]]]);
  expect(hasDrafts()).toBe(true);
  forgetDraft('note:b1');
  forgetDraft('ride:b1');
  expect(hasDrafts()).toBe(false);
});

test('[E2] a photo that is still being made is saved with the form it was taken in, and is in no other', async () => {
  const kept: [string, unknown][] = [];
  keepDraftsIn({ texts: new Map(), photos: new Map(), keep: (key, value) => void kept.push([key, value]) });
  let finish: (made: ReturnType<typeof photo>) => void = () => {};
  const slow = photoBeingMade('slow', new Promise((resolve) => (finish = resolve)));
  putPhotos('part:new', [photo('quick'), slow]);
  // Only what is made can be kept for after a kill.
  expect(kept).toEqual([['part:new', [photo('quick')]]]);
  const saved = madePhotos(photosOf('part:new'));
  finish(photo('slow'));
  expect((await saved).map(({ photoId }) => photoId)).toEqual(['quick', 'slow']);
  forgetDraft('part:new');
  expect(photosOf('part:new')).toEqual([]);
});

test('a photo that could not be made is left out', async () => {
  const lost = photoBeingMade('lost', Promise.resolve(undefined));
  expect(await madePhotos([photo('one'), lost])).toEqual([photo('one')]);
});
