import { type Founded, founded } from '../known.ts';

/** A usual tension of the tighter side, kgf, to begin with where the rim maker prints nothing. */
export interface TensionPreset extends Founded {
  readonly id: string;
  readonly label: string;
  readonly loKgf: number;
  readonly hiKgf: number;
}

const row = (
  id: string,
  label: string,
  [loKgf, hiKgf]: readonly [number, number],
  from: Founded,
): TensionPreset => ({ id, label, loKgf, hiKgf, ...from });

const memory = founded('workshop practice, from memory', 'memory', 0);

/** Usual tensions by kind of rim. The rim maker's printed maximum goes before every one of them. */
export const tensionPresets: readonly TensionPreset[] = [
  row(
    'most-rims',
    'Most rims, ceiling',
    [100, 100],
    founded('dissertation on bicycle wheels, chapter on buckling', 'seen', 1),
  ),
  row('alloy', 'Alloy, road and general', [100, 120], founded('two wheel sellers’ web pages', 'seen', 2)),
  row('twenty-inch', '20 inch, 36 holes, double wall', [90, 110], memory),
  row('single-wall', 'Alloy, single wall or old', [70, 90], memory),
  row('steel', 'Steel rim', [60, 90], memory),
];
