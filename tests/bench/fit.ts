import { checkPile } from '../../src/fit/checkPile.ts';
import { faceInPile } from '../../src/fit/faces/faceInPile.ts';
import { pairFindings } from '../../src/fit/pairFindings.ts';
import { bridgingKinds } from '../../src/fit/partKinds.ts';
import { type PilePart, shelfOf } from '../../src/fit/pile.ts';
import { completeSets } from '../../src/fit/sets/completeSets.ts';
import { bikeSlots } from '../../src/fit/sets/setSlots.ts';
import { everyRow } from '../fixtures/everyRow.ts';
import { everySet } from '../fixtures/everySet.ts';
import { frame, shelfOfParts } from './fitPiles.ts';

/** Runs in the page: the fit check and the search for complete sets, against trying everything. */

const pileOf = (count: number): PilePart[] => [frame, ...shelfOfParts(count - 1)];

/** What a run takes, ms, round by round, after rounds that warm up. */
function timed(rounds: number, work: () => unknown): number[] {
  const spent: number[] = [];
  for (let at = -2; at < rounds; at += 1) {
    const start = performance.now();
    work();
    if (at >= 0) spent.push(performance.now() - start);
  }
  return spent;
}

function once<T>(work: () => T): { ms: number; answer: T } {
  const start = performance.now();
  const answer = work();
  return { ms: performance.now() - start, answer };
}

/** The very first run in a fresh page, as the screen meets it, ms. */
export const firstSetsMs = (count: number): number => {
  const shelf = shelfOfParts(count);
  return once(() => completeSets(shelf, frame)).ms;
};

export const checkMs = (count: number, rounds: number): number[] => {
  const pile = pileOf(count);
  return timed(rounds, () => checkPile(pile));
};

/** Joints of the pile that something has to go between. */
export const bridgedCount = (count: number): number =>
  checkPile(pileOf(count)).findings.filter(({ outcome }) => outcome === 'fits-with').length;

export const setsMs = (count: number, rounds: number): number[] => {
  const shelf = shelfOfParts(count);
  return timed(rounds, () => completeSets(shelf, frame));
};

interface Against {
  searchMs: number[];
  bruteMs: number;
}

function refuseOther(ours: unknown, theirs: unknown): void {
  const [one, other] = [JSON.stringify(ours), JSON.stringify(theirs)];
  if (one !== other) throw new Error(`the search found ${one}, trying everything found ${other}`);
}

/** Bridges of every joint of a pile, by search and by trying every row of adapters. */
export function checkAgainstEveryRow(count: number, rounds: number): Against {
  const pile = pileOf(count);
  const joined = pile.filter(({ kind }) => !bridgingKinds.includes(kind));
  const found = pairFindings(pile).filter(
    ({ outcome }) => outcome === 'fits-with' || outcome === 'does-not-fit',
  );
  const rowsOf = ({ bridges }: (typeof found)[number]): string[] =>
    bridges
      .filter(({ links }) => links.length > 0)
      .map(({ links }) => links.map(({ adapter }) => adapter.id).join('+'))
      .sort();
  const { ms, answer } = once(() =>
    found.map(({ faces }) => {
      const [one, other] = faces.map(({ partId, faceId }) => {
        const part = joined.find((candidate) => candidate.partId === partId);
        const face = part?.faces.find((candidate) => candidate.faceId === faceId);
        if (!part || !face) throw new Error(`no face ${partId}.${faceId}`);
        return faceInPile(part, face, joined);
      });
      if (!one || !other) throw new Error('a joint of one face');
      return everyRow(one, other, shelfOf(pile));
    }),
  );
  refuseOther(found.map(rowsOf), answer);
  return { searchMs: timed(rounds, () => checkPile(pile)), bruteMs: ms };
}

/** The best sets of a shelf, by search and by trying every choice of parts. */
export function setsAgainstEverySet(count: number, rounds: number): Against {
  const shelf = shelfOfParts(count);
  const { ms, answer } = once(() =>
    everySet(shelf, frame, bikeSlots, (parts) => parts.reduce((sum, { massG }) => sum + (massG ?? 0), 0)),
  );
  const best = answer.filter(({ cost }) => cost[0] === answer[0]?.cost[0]).slice(0, 5);
  refuseOther(
    completeSets(shelf, frame).sets.map(
      ({ cost: { missingCount, oneWayCount, bridgeCount, openCount, tie } }) => [
        missingCount,
        oneWayCount,
        bridgeCount,
        openCount,
        tie,
      ],
    ),
    best.map(({ cost }) => cost),
  );
  return { searchMs: timed(rounds, () => completeSets(shelf, frame)), bruteMs: ms };
}
