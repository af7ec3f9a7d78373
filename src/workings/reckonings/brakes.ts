import { adapterFits, classifyMount } from '../../mechanics/brakes/brakeMount.ts';
import { rimWear, wallStrengthLeft } from '../../mechanics/brakes/rim.ts';
import { padWear, rotorWear, type WearVerdict } from '../../mechanics/brakes/rotor.ts';
import { correctedDistanceM, meanDecelerationMps2, stopCompared } from '../../mechanics/brakes/stopping.ts';
import { given as input } from '../../mechanics/working.ts';
import { overturningMps2, stoppingFigures } from '../../standards/checks/stoppingFigures.ts';
import { mounts } from '../../standards/interfaces/mounts.ts';
import { rotorMinimums, rotorSizes } from '../../standards/interfaces/rotors.ts';
import {
  bareAsked,
  type Calculated,
  lengthAsked,
  type Reckoned,
  type Reckoning,
  worked,
} from './reckoning.ts';

/** Which mount two holes so far apart are, with the bolts it takes. */
function mountWords(spacingMm: number | undefined): string[] {
  if (spacingMm === undefined) return [];
  const found = classifyMount(mounts, spacingMm);
  return [
    found.ok
      ? `Holes ${spacingMm} mm apart: ${found.mount.label}; bolts ${found.mount.bolts}.`
      : `Holes ${spacingMm} mm apart are no mount of today: measure again.`,
  ];
}

const mount: Reckoning = {
  id: 'rotor-and-mount',
  label: 'Rotor and mount',
  about: 'Which adapter a rotor asks of a mount, and whether an adapter at hand puts the pads on the track.',
  group: 'Brakes',
  asks: [
    lengthAsked('native', 'Rotor the mount takes bare', [120, 230]),
    lengthAsked('rotor', 'Rotor', [120, 230], {
      hint: `Usual sizes: ${rotorSizes.map(({ diameterMm }) => diameterMm).join(', ')} mm.`,
    }),
    lengthAsked('adapter', 'Adapter at hand: + on the rotor size', [0, 100], {
      first: '0',
      hint: '0 for none.',
    }),
    lengthAsked('spacing', 'Distance of the two holes of the mount', [15, 90], { optional: true }),
  ],
  compute(given): Calculated {
    const [nativeMm, rotorMm, adapterMm] = [
      given.number('native'),
      given.number('rotor'),
      given.number('adapter'),
    ];
    const fits = adapterFits(nativeMm, rotorMm, adapterMm);
    if (!fits.ok && fits.reason === 'smaller-than-the-mount')
      return {
        ok: false,
        reason: 'The rotor is smaller than the mount begins with: no adapter moves a caliper inwards.',
      };
    const inputs = [input('rotor', rotorMm, 'mm'), input('bare mount', nativeMm, 'mm')];
    const off = fits.radialErrorMm;
    return {
      ok: true,
      results: [
        {
          label: 'Adapter asked for, + on the rotor size',
          working: worked(rotorMm - nativeMm, 'mm', 'rotor − bare mount', inputs, 'geometry', 'exact'),
        },
        {
          label: 'Gap between pads and track',
          working: worked(
            off,
            'mm',
            '(rotor − bare mount − adapter) / 2',
            [...inputs, input('adapter', adapterMm, 'mm')],
            'geometry: a caliper sits on a radius; half a millimetre taken as harmless, our suggestion',
            'proposal',
          ),
        },
      ],
      remarks: [
        fits.ok
          ? 'The pads run on the track.'
          : `The pads sit ${off > 0 ? 'too far in' : 'too far out'}: another adapter.`,
        ...mountWords(given.maybe('spacing')),
      ],
    };
  },
};

const wearWords: Record<WearVerdict['reason'], string> = {
  'at-printed-minimum': 'At its printed minimum: replace it.',
  'near-printed-minimum': 'Near its printed minimum: watch it.',
  'thinner-than-unused': 'Worn too far below its unused part: replace it.',
  contaminated: 'Oil or fluid is in it: replace it.',
  'at-limit': 'At the limit: replace it.',
  'near-limit': 'Near the limit: watch it.',
  'bulged-or-indicator-gone': 'Replace it.',
  'nothing-to-compare': 'Nothing to compare with: measure it where no pad runs, or read its mark.',
  'within-limits': 'Within its limits.',
};

const wear: Reckoning = {
  id: 'brake-wear',
  label: 'Rotor, rim and pad wear',
  about: 'Wear left in a rotor, a rim that is braked on, and a pad.',
  group: 'Brakes',
  asks: [
    lengthAsked('thickness', 'Rotor, thinnest spot', [0.5, 4], {
      optional: true,
      hint: 'Point jaws or a micrometer.',
    }),
    lengthAsked('minimum', 'Minimum printed on it', [0.5, 4], {
      optional: true,
      hint: `Minimums seen on rotors: ${rotorMinimums.map(({ minimumMm }) => minimumMm).join(', ')} mm.`,
    }),
    lengthAsked('unused', 'Its thickness where no pad runs', [0.5, 4], { optional: true }),
    lengthAsked('pad', 'Pad, without its plate', [0, 6], { optional: true }),
    lengthAsked('wall', 'Side wall of the rim, thinnest spot', [0.2, 4], {
      optional: true,
      hint: 'Point jaws over the lip, or a ball on each side of the wall.',
    }),
    {
      key: 'dirty',
      label: 'Oil or fluid in the pad',
      options: [
        { value: 'no', label: 'No' },
        { value: 'yes', label: 'Yes' },
      ],
      first: 'no',
    },
    {
      key: 'damaged',
      label: 'Rim bulged, hollow, cracked, or its wear mark gone',
      options: [
        { value: 'no', label: 'No' },
        { value: 'yes', label: 'Yes' },
      ],
      first: 'no',
    },
  ],
  compute(given): Calculated {
    const [thicknessMm, padMm, wallMm] = [given.maybe('thickness'), given.maybe('pad'), given.maybe('wall')];
    if (thicknessMm === undefined && padMm === undefined && wallMm === undefined)
      return { ok: false, reason: 'Measure the rotor, the rim or the pad.' };
    const results: Reckoned[] = [];
    const remarks: string[] = [];
    if (thicknessMm !== undefined) {
      const [printedMinimumMm, unusedMm] = [given.maybe('minimum'), given.maybe('unused')];
      const { reason, leftMm } = rotorWear({
        thicknessMm,
        ...(printedMinimumMm === undefined ? {} : { printedMinimumMm }),
        ...(unusedMm === undefined ? {} : { unusedMm }),
      });
      remarks.push(`Rotor: ${wearWords[reason]}`);
      if (leftMm !== null)
        results.push({
          label: 'Left on the rotor',
          working: worked(
            leftMm,
            'mm',
            printedMinimumMm === undefined ? '0.2 − (unused − thinnest)' : 'thinnest − printed minimum',
            [
              input('thinnest', thicknessMm, 'mm'),
              ...(printedMinimumMm === undefined ? [] : [input('printed minimum', printedMinimumMm, 'mm')]),
              ...(printedMinimumMm !== undefined || unusedMm === undefined
                ? []
                : [input('unused', unusedMm, 'mm')]),
            ],
            'the mark on the rotor first; else a parts seller’s rotor guide',
            'seen',
          ),
        });
    }
    if (padMm !== undefined) {
      const { reason, leftMm } = padWear(padMm, given.choice('dirty') === 'yes');
      remarks.push(`Pad: ${wearWords[reason]}`);
      if (leftMm !== null)
        results.push({
          label: 'Left on the pad',
          working: worked(
            leftMm,
            'mm',
            'compound − 0.5',
            [input('compound', padMm, 'mm')],
            'repair blog; other pages say 1 mm and more',
            'seen',
          ),
        });
    }
    if (wallMm !== undefined) {
      const { reason, leftMm } = rimWear(wallMm, given.choice('damaged') === 'yes');
      const note = 'wheel builder’s note: replace at 1.00 mm or less';
      remarks.push(`Rim: ${wearWords[reason]}`);
      if (leftMm !== null)
        results.push({
          label: 'Left on the rim',
          working: worked(leftMm, 'mm', 'wall − 1.0', [input('wall', wallMm, 'mm')], note, 'seen'),
        });
      results.push({
        label: 'Strength of the wall, share of a new one of 1.5 mm',
        working: worked(
          wallStrengthLeft(wallMm),
          '',
          '(wall / 1.5)³',
          [input('wall', wallMm, 'mm')],
          'wheel builder’s note',
          'seen',
        ),
      });
    }
    return { ok: true, results, remarks };
  },
};

const stopping: Reckoning = {
  id: 'stopping-distance',
  label: 'Stopping distance',
  about: 'Compare your stop with a published figure.',
  group: 'Brakes',
  asks: [
    {
      key: 'figure',
      label: 'Compare with',
      options: stoppingFigures.map((row) => ({
        value: row.id,
        label: `${row.bike}, ${row.brakes === 'both' ? 'both brakes' : 'rear brake'}, ${row.wet ? 'wet' : 'dry'}: ${row.withinM} m from ${row.fromKmh} km/h`,
      })),
      first: 'city-both-dry',
    },
    bareAsked('speed', 'Speed at the first touch, km/h', [5, 60]),
    bareAsked('distance', 'Distance to standstill, m', [0.5, 100]),
  ],
  compute(given): Calculated {
    const row = stoppingFigures.find(({ id }) => id === given.choice('figure'));
    if (!row) return { ok: false, reason: 'Choose a figure to compare with.' };
    const [speed, distanceM] = [given.number('speed'), given.number('distance')];
    const deceleration = meanDecelerationMps2(speed, distanceM);
    if (deceleration > 12)
      return { ok: false, reason: 'No bicycle stops that fast. Check speed and distance.' };
    const corrected = correctedDistanceM(distanceM, speed, row.fromKmh);
    const share = stopCompared(row, speed, distanceM);
    return {
      ok: true,
      results: [
        {
          label: 'Mean deceleration',
          working: worked(
            deceleration,
            'm/s²',
            'a = v² / 2s',
            [input('v', speed, 'km/h'), input('s', distanceM, 'm')],
            'definition',
            'exact',
          ),
        },
        ...(corrected.ok ? [{ label: 'At the speed of the figure', working: corrected.working }] : []),
        {
          label: 'Share of the deceleration the figure asks for',
          working: worked(
            share,
            '',
            'a / a of the figure',
            [input('v', speed, 'km/h'), input('s', distanceM, 'm'), input('figure', row.withinM, 'm')],
            row.source,
            row.known,
          ),
        },
      ],
      remarks: [
        'For comparing with bikes on sale, not a test for the road.',
        ...(corrected.ok
          ? []
          : ['The speed is too far off for the distance to be corrected; only decelerations compare.']),
        ...(deceleration > overturningMps2.value
          ? ['Above about 6 m/s² a bicycle goes over its front wheel.']
          : []),
      ],
    };
  },
};

export const brakeReckonings: readonly Reckoning[] = [mount, wear, stopping];
