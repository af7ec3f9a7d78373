import type { Known } from '../known.ts';

/** One thing a hand measures or reads on a face. Its key ends in its unit: Mm, Count or Bar. */
export interface DimensionRow {
  key: string;
  label: string;
  /** Below or above this a value is more likely a slip of the finger than a bicycle part. */
  min: number;
  max: number;
  /** Where the jaws go, or where the figure is printed. */
  how: string;
  /** A face without it cannot be judged; the others help. */
  needed?: boolean;
  /** Asked only of a piece that goes between two others: an ordinary part has no such size. */
  between?: boolean;
}

/** One thing a look tells: a material, a shape. The first choice is not a default. */
export interface TraitRow {
  key: string;
  label: string;
  choices: readonly string[];
  how: string;
}

export interface FaceKindRow {
  label: string;
  /** In the order a hand measures. */
  dimensions: readonly DimensionRow[];
  traits?: readonly TraitRow[];
  /** The face has to name a row of a standards table to be judged (a thread, a pattern). */
  named?: boolean;
  /** Plausible ranges are our suggestion around the sizes in the tables. */
  known: Known;
}

const proposal: Known = 'proposal';

export const dimension = (
  key: string,
  label: string,
  range: readonly [min: number, max: number],
  how: string,
  needed = true,
): DimensionRow => ({ key, label, min: range[0], max: range[1], how, needed });

export const trait = (key: string, label: string, choices: readonly string[], how: string): TraitRow => ({
  key,
  label,
  choices,
  how,
});

export const faceKind = (
  label: string,
  dimensions: readonly DimensionRow[],
  rest: Pick<FaceKindRow, 'traits' | 'named'> = {},
): FaceKindRow => ({ label, dimensions, ...rest, known: proposal });
