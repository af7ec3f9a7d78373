import type { Entry } from '../entries.ts';
import type { SealRow } from '../rows.ts';

/** The seal of one wheel: marks and readings in the order they were made, kept so that a leak can be computed. */
export function reduceSeal(row: SealRow | undefined, entry: Entry): SealRow | undefined {
  if (entry.type !== 'seal-marked') return row;
  const base: SealRow = row ?? {
    key: `seal/${entry.jointId}`,
    is: 'seal',
    group: `seal@${entry.bikeId}`,
    jointId: entry.jointId,
    bikeId: entry.bikeId,
    lastMs: entry.happenedAtMs,
    marks: [],
  };
  const { mark } = entry;
  const kept = { ...mark, entryId: entry.id, atMs: entry.happenedAtMs };
  return {
    ...base,
    marks: [...base.marks, entry.note === undefined ? kept : { ...kept, note: entry.note }],
    // A burp, fresh sealant or a new seating makes an older verdict worthless.
    verdict:
      mark.mark === 'verdict'
        ? mark.verdict
        : mark.mark === 'burped' || mark.mark === 'sealant' || mark.mark === 'seated'
          ? undefined
          : base.verdict,
  };
}
