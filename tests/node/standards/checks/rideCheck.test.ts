import { describe, expect, test } from 'vitest';
import { rideCheck } from '../../../../src/standards/checks/rideCheck.ts';

const items = rideCheck.flatMap((group) => group.items);

describe('the check before a ride', () => {
  test('walks front wheel, fork and bars, cranks, saddle, rear wheel (club and college training sheets)', () =>
    expect(rideCheck.map((group) => group.id)).toEqual([
      'front-wheel',
      'fork-and-bars',
      'cranks',
      'saddle',
      'rear-wheel',
      'then',
    ]));

  test.each(rideCheck.map((group) => [group.title, group] as const))(
    '%s has no more items than people read (five to nine, notes on surgical checklists)',
    (_, group) => {
      expect(group.items.length).toBeGreaterThan(0);
      expect(group.items.length).toBeLessThanOrEqual(9);
    },
  );

  test('every item has an id of its own and names a state', () => {
    expect(new Set(items.map((item) => item.id)).size).toBe(items.length);
    for (const item of items) {
      expect(item.words.split(' ').length, item.id).toBeGreaterThan(3);
      // "checked" and "ok" say nothing (aviation guidelines on checklist wording).
      expect(item.words, item.id).not.toMatch(/\b(checked?|ok|okay|set)$/i);
    }
  });

  test.each(['brakes', 'steering', 'wheels', 'saddle'])('no finding at the %s may wait', (area) => {
    const inArea = items.filter((item) => item.area === area);
    expect(inArea.length).toBeGreaterThan(0);
    expect(inArea.filter((item) => !item.neverDefer)).toEqual([]);
  });

  test('some findings may wait, or the distinction would be idle', () =>
    expect(items.some((item) => !item.neverDefer)).toBe(true));
});
