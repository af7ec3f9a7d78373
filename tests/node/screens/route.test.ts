import { expect, test } from 'vitest';
import { hrefOf, type Route, routeOf } from '../../../src/screens/route.ts';

test.each<[string, Route]>([
  ['#/bike/b1', { at: 'bike', bikeId: 'b1' }],
  ['#/history/b%3Ab1', { at: 'history', place: 'b:b1' }],
  ['#/tools', { at: 'tools' }],
  // What a notice is about opens at once.
  ['#/rechecks/b1/r%2F1', { at: 'rechecks', bikeId: 'b1', open: 'r/1' }],
  ['#/bike/b1/', { at: 'bike', bikeId: 'b1' }],
  // An address that names none leads home.
  ['', { at: 'home' }],
  ['#/bike/', { at: 'home' }],
  ['#/nowhere/b1', { at: 'home' }],
  ['#/constructor/x', { at: 'home' }],
  ['#/toString/x', { at: 'home' }],
  ['#/__proto__/x', { at: 'home' }],
  // RFC 3986 section 2.1: a percent sign is followed by two hexadecimal digits; these bytes are no text either.
  ['#/bike/50%', { at: 'bike', bikeId: '50%' }],
  ['#/bike/%E0', { at: 'bike', bikeId: '%E0' }],
])('%s', (hash, route) => expect(routeOf(hash)).toEqual(route));

test.each<[Route, string]>([
  [{ at: 'bike', bikeId: 'b1' }, '#/bike/b1'],
  [{ at: 'history', place: 'b:b1' }, '#/history/b%3Ab1'],
  [{ at: 'settings' }, '#/settings'],
  [{ at: 'seal', jointId: 'j1', open: 'again' }, '#/seal/j1/again'],
  [{ at: 'bike', bikeId: 'b/1', open: 'w1' }, '#/bike/b%2F1/w1'],
  [{ at: 'edit-part', partId: 'p', faceId: 'f' }, '#/edit-part/p/f'],
  [{ at: 'change-part', partId: 'p' }, '#/change-part/p'],
  [{ at: 'fit', bikeId: 'b', findingId: 'a:b.c~d' }, '#/fit/b/a%3Ab.c~d'],
])('%j', (route, href) => {
  expect(hrefOf(route)).toBe(href);
  expect(routeOf(href)).toEqual(route);
});
