import { valveInHole, valveLengthMm } from '../../mechanics/tyres/rimValve.ts';
import { given as input } from '../../mechanics/working.ts';
import { valveLengths, valves } from '../../standards/tyres/valves.ts';
import { type Calculated, lengthAsked, type Reckoning, worked } from './reckoning.ts';

/** Valve for a rim: its length, and whether the stem suits the hole. */
export const valve: Reckoning = {
  id: 'valve',
  label: 'Valve',
  about: 'How long a valve a deep rim needs, and whether its stem suits the hole.',
  group: 'Tyres',
  asks: [
    {
      key: 'kind',
      label: 'Valve',
      options: valves.map(({ id, label }) => ({ value: id, label })),
      first: 'french',
    },
    lengthAsked('depth', 'Depth of the rim', [5, 120], {
      hint: 'Depth rod from the inner edge to the seat of the valve.',
    }),
    lengthAsked('hole', 'Hole of the rim', [4, 12], { optional: true }),
  ],
  compute(given): Calculated {
    const row = valves.find(({ id }) => id === given.choice('kind'));
    if (!row) return { ok: false, reason: 'Choose a valve.' };
    const depthMm = given.number('depth');
    const lengthMm = valveLengthMm(depthMm, valveLengths.lengthsMm);
    if (lengthMm === null)
      return {
        ok: false,
        reason: 'No valve on sale is long enough: an extender, or a tube with a longer one.',
      };
    const length = worked(
      lengthMm,
      'mm',
      'shortest on sale that is 15 mm longer than the rim is deep',
      [input('depth', depthMm, 'mm')],
      valveLengths.source,
      valveLengths.known,
    );
    const holeMm = given.maybe('hole');
    if (holeMm === undefined) return { ok: true, results: [{ label: 'Length', working: length }] };
    const seat = valveInHole(row.stemMm, holeMm);
    const play = worked(
      seat.playMm,
      'mm',
      'hole − stem',
      [input('hole', holeMm, 'mm'), input('stem', row.stemMm, 'mm')],
      row.source,
      row.known,
    );
    const words = seat.ok
      ? { fits: 'The stem suits the hole.', sleeve: 'The hole is wide: a sleeve, or the valve tilts.' }[
          seat.how
        ]
      : 'The hole is too small. Do not drill: it weakens a narrow rim.';
    return {
      ok: true,
      results: [
        { label: 'Length', working: length },
        { label: 'Play in the hole', working: play },
      ],
      remarks: [words],
    };
  },
};
