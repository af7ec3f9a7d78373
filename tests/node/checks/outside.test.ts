import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { spanOf, standardsFor } from '../../../src/fit/faces/standardOf.ts';
import { stoppingFigures } from '../../../src/standards/checks/stoppingFigures.ts';
import { type FaceKind, faceKindIds } from '../../../src/standards/faces/faceKinds.ts';
import { embedmentSource } from '../../../src/standards/screws/embedment.ts';
import { toolClasses } from '../../../src/standards/screws/toolClasses.ts';
import { outsideChecks } from '../../fixtures/outside/index.ts';
import { countByKind } from '../../fixtures/outside/outsideCheck.ts';
import { placeOf, places } from '../../fixtures/places.ts';

const top = fileURLToPath(new URL('../../..', import.meta.url));

describe('the list of outside checks', () => {
  const files = readdirSync(`${top}tests/fixtures/outside`, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts'),
  );

  test('every check has an id of its own', () => {
    const ids = outsideChecks.map((check) => check.id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  test('every check names its source, its unit and a tolerance that can fail', () => {
    for (const check of outsideChecks) {
      expect(check.source, check.id).toMatch(/\S{3}/);
      expect(check.unit, check.id).not.toBe('');
      expect(check.tolerance, check.id).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(check.expected), check.id).toBe(true);
      // Half the value or more would let nearly anything pass.
      if (check.expected !== 0) expect(check.tolerance, check.id).toBeLessThan(Math.abs(check.expected) / 2);
    }
  });

  test('a wrong print that must not come out is behaviour', () => {
    for (const check of outsideChecks) if (check.negative) expect(check.kind, check.id).toBe('behaviour');
  });

  test('no expected value is taken from src: a row that did would change with it', () => {
    // A value that comes from the source tree has passed through a name; a printed one is a number in the fixture.
    const taken = files.filter((file) =>
      /expected: *(?!\w*(Nm|N|Mm|mm2|printedNm)?\b[,\n])[a-z]\w*\.(?!sqrt|PI|SQRT)[a-zA-Z]+(Mm|Nm|Mpa|MPa|Um)\b/.test(
        readFileSync(`${top}tests/fixtures/outside/${file}`, 'utf8'),
      ),
    );
    expect(taken).toEqual([]);
  });

  test('nothing clamps a printed value into our own range', () => {
    const clamping = [...files.map((file) => `outside/${file}`), 'printed.ts'].filter((file) =>
      /Math\.(min|max)\([^)]*Math\.(min|max)\(/.test(readFileSync(`${top}tests/fixtures/${file}`, 'utf8')),
    );
    expect(clamping).toEqual([]);
  });

  test('a fitted input says from which row it comes, and that row is no check', () => {
    const fitted = outsideChecks.filter((check) => check.fitted);
    expect(fitted.length).toBeGreaterThan(0);
    for (const { id, fitted: from } of fitted) {
      expect(from?.input, id).toMatch(/\S{3}/);
      expect(from?.from, id).toMatch(/^its /);
      // "its row M6, class 8.8" → none of the rows of this topic is the one it was fitted to.
      const row = /row (\S+?)(?:, class (\S+))?$/.exec(from?.from ?? '');
      const sameRow = `${id.split('/').slice(0, 2).join('/')}/${[row?.[1], row?.[2]].filter(Boolean).join('/')}`;
      expect(outsideChecks.map((check) => check.id)).not.toContain(sameRow);
    }
  });
});

describe('sources can be found again', () => {
  const weak = outsideChecks.filter(({ source }) => placeOf(source) === undefined);

  test('a forum, a shop or a page without an address is weak', () => {
    for (const source of ['shop page with a wrong pitch', 'cycling forum', 'general knowledge', 'a page'])
      expect(placeOf(source)).toBeUndefined();
    expect(placeOf('exact by definition of the inch')).toBeDefined();
    expect(placeOf('EN 14766:2005 4.6.7.5.1, Sc = (Vs/Vm)²·Sm')).toBeDefined();
  });

  test('every place is one that can be gone to, and is used', () => {
    for (const [source, place] of Object.entries(places)) {
      expect(place, source).toMatch(/\.\w{2,}|\d|table|column|page|chart/);
      expect(
        outsideChecks.some((check) => check.source.startsWith(source)),
        `no check says: ${source}`,
      ).toBe(true);
    }
  });

  test('fewer than a quarter of the outside checks are weak', () => {
    const outside = outsideChecks.filter(({ kind }) => kind !== 'copied');
    const weakOutside = weak.filter(({ kind }) => kind !== 'copied');
    expect(weakOutside.length / outside.length).toBeLessThan(0.25);
  });
});

describe('both ends of a range are checked', () => {
  /** Sizes that some page is held against, by face, key and standard. */
  const printed = outsideChecks.flatMap(({ id, expected }) => {
    const found = /^interfaces\/(.+)-(\w+(?:Mm|Count))-(.+)-([\d.]+)$/.exec(id);
    return found && expected === 1
      ? [{ kind: found[1] as FaceKind, key: found[2] ?? '', standard: found[3] ?? '', mm: Number(found[4]) }]
      : [];
  });
  const ranges = faceKindIds.flatMap((kind) =>
    standardsFor(kind).flatMap((row) =>
      Object.entries(row.faces[kind] ?? {}).flatMap(([key, span]) => {
        const [lo, hi] = spanOf(span ?? Number.NaN);
        const figures = printed
          .filter((one) => one.kind === kind && one.key === key && one.standard === row.id)
          .map(({ mm }) => mm);
        const fromMemory = row.known !== 'seen' || row.fromMemory?.includes(key);
        return lo < hi && figures.length > 0 && !fromMemory
          ? [[`${kind} ${key} ${row.id}`, lo, hi, figures] as const]
          : [];
      }),
    ),
  );

  /** Of these only one end was ever printed where we read; the other is a tolerance of our own. */
  const oneEnd = ['american-small', '1.375x24', '34.7x1', '30x1', 'two-rail-oval'];

  test('there are such ranges', () => expect(ranges.length).toBeGreaterThan(5));
  test.each(ranges)('%s, %d to %d', (name, lo, hi, figures) => {
    const ends = [lo, hi].filter((end) => figures.some((mm) => Math.abs(mm - end) <= 0.11));
    if (!oneEnd.some((id) => name.endsWith(` ${id}`))) expect(ends).toEqual([lo, hi]);
    expect(figures.length).toBeGreaterThan(0);
  });
});

describe('the tables by which a person can be hurt have two origins, or say that they have one', () => {
  /** What is remembered or judged is no origin. */
  const origin = (source: string) =>
    /from memory|own judgement|weak/.test(source) ? [] : [source.split(/[,:;]| p\. /)[0] ?? source];
  const originsOf = (begin: string) =>
    new Set(outsideChecks.filter(({ id }) => id.startsWith(begin)).flatMap(({ source }) => origin(source)));

  test.each([
    ['nut factors', 'safety/nut-factor/'],
    ['clamp friction', 'safety/clamp-friction/'],
    ['torque bands', 'band/'],
    ['test torques of bar, stem and wheels', 'safety/joint-test/'],
    ['thread engagement', 'safety/engagement/'],
    ['re-check spans', 'safety/re-check/'],
    ['cure', 'safety/cure/'],
    ['property classes', 'safety/class/'],
  ])('%s', (_, begin) => expect(originsOf(begin).size).toBeGreaterThanOrEqual(2));

  test.each([
    ['embedment', embedmentSource.source, embedmentSource.known] as const,
    ...toolClasses.map(({ toolClass, source, known }) => [toolClass, source, known] as const),
    ...stoppingFigures.map(({ id, source, known }) => [id, source, known] as const),
  ])('%s stands on one origin or on memory, and its row says so where it is shown', (_, source, known) => {
    expect(source).toMatch(/\S{4}/);
    expect(['seen', 'memory']).toContain(known);
  });
});

test('README says the three numbers', () => {
  const { computed, behaviour, copied } = countByKind(outsideChecks);
  const readme = readFileSync(`${top}README.md`, 'utf8').replaceAll(/\s+/g, ' ');
  expect(readme).toContain(`${computed} computed, ${behaviour} behaviour, ${copied} copied`);
});
