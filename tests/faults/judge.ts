import { isDeepStrictEqual } from 'node:util';
import type { Acknowledged } from './acknowledged.ts';
import type { FoldElsewhere } from './foldElsewhere.ts';
import { plainFaults } from './plainChecks.ts';
import type { Stored, StoredRow } from './stored.ts';
import { together, type Verdict } from './tally.ts';

/**
 * Holds a store against what was acknowledged, against a fresh fold of its journal made elsewhere, and against the
 * plain counts.
 * @param stored what lies on the disk now
 * @param acknowledged the attacking process's own list
 */
export async function judge(
  stored: Stored,
  acknowledged: Acknowledged,
  fold: FoldElsewhere,
): Promise<Verdict> {
  return together(acknowledged.check(stored), await rowsAgainstFold(stored, fold), {
    lost: [],
    wrong: plainFaults(stored),
  });
}

async function rowsAgainstFold(stored: Stored, fold: FoldElsewhere): Promise<Verdict> {
  try {
    return { lost: [], wrong: rowDifferences(stored.rows, await fold.rowsOf(stored.lines)) };
  } catch (thrown) {
    return { lost: [], wrong: [`the journal cannot be folded: ${String(thrown).slice(0, 300)}`] };
  }
}

/** One sentence for each row that is missing, too many or different. */
export function rowDifferences(found: readonly StoredRow[], fresh: readonly StoredRow[]): string[] {
  const rows = new Map(found.map((row) => [row.key, row]));
  const want = new Map(fresh.map((row) => [row.key, row]));
  return [
    ...[...want].flatMap(([key, row]) => {
      const there = rows.get(key);
      if (!there) return [`row ${key} is missing`];
      return isDeepStrictEqual(there, row) ? [] : [`row ${key} is not the fold: ${fieldsApart(there, row)}`];
    }),
    ...[...rows.keys()].filter((key) => !want.has(key)).map((key) => `row ${key} comes from no entry`),
  ];
}

function fieldsApart(found: StoredRow, want: StoredRow): string {
  return [...new Set([...Object.keys(found), ...Object.keys(want)])]
    .filter((field) => !isDeepStrictEqual(found[field], want[field]))
    .map((field) => `${field} ${text(found[field])} for ${text(want[field])}`)
    .join(', ')
    .slice(0, 240);
}

const text = (value: unknown) => (JSON.stringify(value) ?? 'nothing').slice(0, 80);
