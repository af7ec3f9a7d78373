import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { meet } from '../../../src/fit/bridges/meet.ts';
import { tableAdapters } from '../../../src/fit/bridges/shelfAdapter.ts';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { faceInPile } from '../../../src/fit/faces/faceInPile.ts';
import type { Finding } from '../../../src/fit/finding.ts';
import { bridgingKinds } from '../../../src/fit/partKinds.ts';
import type { PilePart } from '../../../src/fit/pile.ts';
import { sits } from '../../fixtures/everyRow.ts';
import { magpie } from '../../fixtures/magpie.ts';

/** Adapters of the table as parts that lie in the pile. */
const drawer: PilePart[] = tableAdapters.map(({ id, sort, label, faces }) => ({
  partId: `drawer-${id}`,
  kind: sort,
  name: label,
  faces,
}));

/** A pile of real parts, some of whose sizes have been knocked to a neighbouring one. */
const piles = fc
  .tuple(
    fc.subarray([...magpie], { minLength: 2 }),
    fc.subarray(drawer),
    fc.constantFrom(0, 0.2, -0.4, 1.8, 3.2),
    fc.nat(30),
  )
  .map(([parts, shims, offMm, which]) => [
    ...parts.map((part, index) =>
      index !== which % parts.length
        ? part
        : {
            ...part,
            faces: part.faces.map((face) => ({
              ...face,
              nominal: Object.fromEntries(
                Object.entries(face.nominal).map(([key, value]) => [
                  key,
                  key.endsWith('Mm') ? value + offMm : value,
                ]),
              ),
            })),
          },
    ),
    ...shims,
  ]);

/** Parts of the pile a finding would put between, each once. */
const ownPartsOf = ({ bridges }: Finding): string[] => [
  ...new Set(bridges.flatMap(({ links }) => links.flatMap(({ adapter }) => adapter.partId ?? []))),
];

test('[F1] [F3] random piles: every bridge holds link by link, and no adapter of the pile that would do is left out', () => {
  fc.assert(
    fc.property(piles, (parts) => {
      const { findings, fitting, toMeasure } = checkPile(parts);
      const joined = parts.filter(({ kind }) => !bridgingKinds.includes(kind));
      expect(fitting.every(({ bridges }) => bridges.length === 0)).toBe(true);
      expect(toMeasure.every(({ bridges }) => bridges.length === 0)).toBe(true);
      const all = [...findings, ...fitting, ...toMeasure];
      for (const { partId, faceId, kind } of all.flatMap(({ asks }) => asks))
        expect(
          parts
            .find((part) => part.partId === partId)
            ?.faces.some((face) => face.faceId === faceId && face.kind === kind),
        ).toBe(true);
      const given = all.flatMap(ownPartsOf);
      expect(new Set(given).size).toBe(given.length);
      for (const finding of findings) {
        const [one, other] = finding.faces.map(({ partId, faceId }) => {
          const part = parts.find((candidate) => candidate.partId === partId);
          const face = part?.faces.find((candidate) => candidate.faceId === faceId);
          if (!part || !face)
            throw new Error(`a finding about ${partId}.${faceId}, which is not in the pile`);
          return faceInPile(part, face, joined);
        });
        if (!one || !other) continue;
        for (const { links } of finding.bridges) {
          const open = links.reduce((face, { near, far }) => {
            expect(sits(face, near)).toBe(true);
            return far;
          }, one);
          if (links.length > 0) expect(sits(open, other)).toBe(true);
        }
        if (finding.faces.length > 2 || meet(one, other)?.final) continue;
        const helps = parts
          .filter(({ faces: [a, b], kind }) => bridgingKinds.includes(kind) && a && b)
          .filter(
            ({ faces: [a, b] }) =>
              a && b && ((sits(one, a) && sits(b, other)) || (sits(one, b) && sits(a, other))),
          );
        const offered = finding.bridges.map(({ bridgeId }) => bridgeId);
        // A piece that another joint has is offered as one more like it.
        for (const { partId } of helps)
          expect(offered.filter((id) => id === `part:${partId}` || id === `another:${partId}`).length).toBe(
            1,
          );
      }
    }),
    { numRuns: 60 },
  );
});
