import { openCopy } from '../../../../src/exchange/copy/openCopy.ts';
import { fileSentence } from '../../../../src/words/fileRefusals.ts';
import { photoOf, whole } from '../aCopy.ts';
import { Dice } from './dice.ts';
import { PASSPHRASE, soundCopies } from './material.ts';
import { mutations } from './mutations.ts';

export interface Report {
  attacks: number;
  /** Refused with a sentence, by the name of the refusal. */
  refused: Record<string, number>;
  /** Read to the same entries and photos. */
  read: number;
  /** Anything else: an error, other entries, a refusal without a sentence, longer than two seconds. */
  wrong: string[];
  slowestMs: number;
}

const MOST_MS = 2000;

const weighed = mutations.flatMap((row) => Array<typeof row>(row[1]).fill(row));

/** Time the processor spent, ms: a machine that is busy with other things is no fault of the reader. */
const spentMs = (since: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
};

/**
 * Mutated copies, each made from its own seed, opened as the app opens a file from outside.
 * @param from first seed; @param count how many
 */
export async function attack(from: number, count: number): Promise<Report> {
  const material = await soundCopies();
  const sound = material.entries.map((entry) => JSON.stringify(entry)).sort();
  const report: Report = { attacks: 0, refused: {}, read: 0, wrong: [], slowestMs: 0 };
  for (let seed = from; seed < from + count; seed += 1) {
    const dice = new Dice(seed);
    const [name, , mutate] = dice.pick(weighed);
    report.attacks += 1;
    const fail = (why: string) => report.wrong.push(`${name}, seed ${seed}: ${why}`);
    const { bytes, must } = mutate(dice, material);
    const start = process.cpuUsage();
    try {
      const copy = await openCopy(new Blob([bytes]), { passphrase: PASSPHRASE });
      if ('refused' in copy) {
        report.refused[copy.refused] = (report.refused[copy.refused] ?? 0) + 1;
        if (!/^[A-Z].+\.$/s.test(fileSentence(copy))) fail(`no sentence: ${fileSentence(copy)}`);
      } else {
        const { entries, photos } = await whole(copy);
        const read = entries.map((entry) => JSON.stringify(entry)).sort();
        const same = sound.length === read.length && sound.every((line, at) => line === read[at]);
        if (!same || !photosAreSound(photos)) fail('read to something else');
        else if (must) fail('was read');
        else report.read += 1;
      }
    } catch (thrown) {
      fail(`threw ${String(thrown)}`);
    }
    const ms = spentMs(start);
    report.slowestMs = Math.max(report.slowestMs, ms);
    if (ms > MOST_MS) fail(`took ${Math.round(ms)} ms`);
  }
  return report;
}

const SIZES = [3000, 5000, 800, 400_000, 300_000];

function photosAreSound(photos: { photoId: string; buf: ArrayBuffer }[]): boolean {
  return photos.every(({ photoId, buf }) => {
    const number = Number(photoId.slice(2));
    return Buffer.from(photoOf(number, SIZES[number - 1]).buf).equals(Buffer.from(buf));
  });
}
