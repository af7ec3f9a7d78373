import type { Sourced } from '../known.ts';
import type { TorqueBandRow } from './torqueBands.ts';

/** Where figures come from; two documents of one house are one origin. */
export interface BandOrigin extends Sourced {
  /** A printed document; a page that names no source, practice and memory are none: they advise and never approve. */
  readonly document: boolean;
}

const document = (source: string): BandOrigin => ({ document: true, source, known: 'seen' });
const manual = document('bicycle owner’s manual 3667378 p. 77, appendix of fastener torques');
const house = document(
  'torque list of one bicycle house, as two of its shops reprint it, its seatpost manual 2787556 p. 2 and its user guide of 2002 p. 24 (one origin)',
);
const axleManual = document('bicycle owner’s manual 771343 p. 36, axle nuts in in·lbf');
const rearManual = document('bicycle owner’s manual, 7th edition p. 20, rear axle nuts in in·lbf');
const webGuide: BandOrigin = {
  document: false,
  source: 'bicycle maintenance guide on a web page that names no source',
  known: 'seen',
};
const wheelPage: BandOrigin = {
  document: false,
  source: 'wheel seller’s web page on torques that names no source',
  known: 'seen',
};
const practice: BandOrigin = { document: false, source: 'common practice, from memory', known: 'memory' };

const at = (origin: BandOrigin, loNm: number, hiNm: number) => ({ origin, loNm, hiNm });
const row = (
  joint: TorqueBandRow['joint'],
  variant: string,
  threads: TorqueBandRow['threads'],
  ...prints: TorqueBandRow['prints']
): TorqueBandRow => ({ joint, variant, threads, prints });

const axle38 = ['3/8-24', '3/8-26'];
const steel = { screw: 'steel' } as const;
const aluminium = { screw: 'aluminium' } as const;
/** Chainring bolts have a thread of their own; many are called M8 all the same. */
const ringBolt = ['M8x0.75', 'M8'];

/**
 * Torques printed for joints elsewhere, each for one make of joint. Threads are those the source names, or the one
 * its key or its bolt fixes (ISO 4762: a 4 mm key turns M5, 5 mm M6, 6 mm M8; from memory).
 */
export const torqueBands: readonly TorqueBandRow[] = [
  row('bar-clamp', 'light face plate', ['M5'], at(webGuide, 4, 6)),
  row('bar-clamp', 'heavy stem, two bolts', ['M8'], at(manual, 19.7, 29.4)),
  row('bar-clamp', 'BMX stem, M8', ['M8'], at(practice, 12, 20)),
  row('bar-clamp', 'BMX stem, M6', ['M6'], at(practice, 9, 12)),
  row('stem-steerer', 'light stem', null, at(webGuide, 5, 7)),
  row('stem-steerer', 'older steel stem', null, at(manual, 13.6, 16.3)),
  row('stem-quill', 'wedge bolt', null, at(manual, 19.7, 29.4)),
  row('headset', 'threaded headset, locknut', 'own', at(manual, 14.7, 16.9)),
  row('headset', 'top cap, sets the bearing only', ['M5', 'M6'], at(webGuide, 1, 2)),
  row('seatpost', 'collar, metal post', null, at(house, 9.6, 14.1)),
  row('seatpost', 'collar, carbon post', null, at(house, 7.3, 9)),
  row('seatpost', 'light collar, one bolt', null, at(webGuide, 5, 7)),
  row('saddle-rails', 'one bolt, 6 mm key', ['M8'], at(house, 17, 28.3)),
  row('saddle-rails', 'two bolts, 5 mm key', ['M6'], at(house, 9.6, 14.1)),
  row('saddle-rails', 'two bolts, 4 mm key', ['M5'], at(house, 5.1, 6.8)),
  row('saddle-rails', 'clamp with nuts', null, at(house, 20.3, 24.9)),
  row(
    'crank',
    'square taper or spline, M8',
    ['M8', 'M8x1'],
    at(manual, 34.5, 44.2),
    at(house, 38, 42),
    at(webGuide, 40, 55),
  ),
  row('crank', 'spline, M12', ['M12', 'M12x1.25', 'M12x1.5'], at(house, 43.4, 54.2)),
  row('crank', 'spline, M15', null, at(house, 42.4, 54.2)),
  row('crank', 'tubular BMX spindle', null, at(practice, 20, 35)),
  row('crank-pinch', 'two bolts, in turns', null, at(house, 12, 15)),
  row('crank-pinch', 'BMX, one bolt', null, at(practice, 15, 20)),
  {
    ...row('chainring', 'aluminium bolts', ringBolt, at(manual, 5, 9.9), at(house, 8, 9)),
    ...aluminium,
  },
  { ...row('chainring', 'steel bolts', ringBolt, at(manual, 7.9, 10.7), at(house, 12, 14)), ...steel },
  row('bottom-bracket', 'threaded cups', 'own', at(house, 33.9, 40.7)),
  row('pedal', 'pedal in the crank', ['9/16-20', '1/2-20'], at(manual, 34.7, 39.5), at(webGuide, 35, 40)),
  row('front-axle', 'axle nuts', ['5/16-24', '5/16-26', ...axle38], at(axleManual, 20.3, 27.1)),
  row('rear-axle', 'axle nuts, 3/8 in', axle38, at(axleManual, 27.1, 33.9), at(rearManual, 27.1, 33.9)),
  row('rear-axle', 'axle nuts, 14 mm', ['M14x1'], at(practice, 35, 50)),
  row('rear-axle', 'bolts in a female axle', ['M10', 'M10x1', 'M10x1.25'], at(practice, 35, 45)),
  row('thru-axle', 'pinch bolts of the fork end', ['M5', 'M6'], at(axleManual, 5.1, 6.2)),
  row(
    'thru-axle',
    'the axle itself, turned with a key',
    ['M12', 'M12x1', 'M12x1.5', 'M14x1.5', 'M15x1.5'],
    at(webGuide, 12, 18),
    at(wheelPage, 8, 15),
    at(practice, 10, 15),
  ),
  row('rotor', 'six bolts', ['M5'], at(house, 5.1, 6.2), at(webGuide, 4, 6)),
  row('rotor', 'splined, lockring', 'own', at(house, 39.5, 40), at(webGuide, 39.5, 40)),
  row('caliper', 'disc brake on M6', ['M6'], at(house, 11.3, 12.4), at(webGuide, 6, 8)),
  row('caliper', 'disc brake on M5', ['M5'], at(house, 6.8, 7.3)),
  row('caliper', 'rim brake arm on its stud', null, at(house, 7.9, 9.6)),
  row('caliper', 'rim brake, one bolt in the fork', null, at(house, 6, 7)),
  row('caliper', 'rim brake, one bolt at metal stays', null, at(house, 7.9, 9.6)),
  row('caliper', 'pad of a brake on studs', null, at(house, 7.9, 9)),
  row('caliper', 'pad of a brake on one bolt', null, at(house, 4.5, 6.8)),
  row('brake-mount', 'adapter, M6', ['M6'], at(house, 11.3, 12.4), at(webGuide, 6, 8)),
  row('brake-mount', 'adapter, M5', ['M5'], at(house, 6.8, 7.3)),
  row('cable-anchor', 'brake cable', null, at(house, 5.7, 7.9), at(webGuide, 6, 8)),
  row('cable-anchor', 'gear cable', null, at(manual, 5, 6.8), at(house, 4, 5.9)),
  row('lever-clamp', 'brake lever', null, at(webGuide, 4, 5)),
  row('lever-clamp', 'shifter', null, at(webGuide, 3, 4)),
  row('sprocket', 'cassette lockring', 'own', at(house, 30, 50), at(webGuide, 39.5, 40)),
  row('lockring', 'lockring of a fixed sprocket', 'own', at(practice, 30, 40)),
  row('freewheel', 'freewheel or driver', 'own', at(practice, 30, 40)),
  row('grip', 'lock-on', null, at(practice, 2, 4)),
];
