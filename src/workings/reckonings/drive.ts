import { closestAxleMm } from '../../mechanics/drive/chainDrive.ts';
import { longestPitches, shortestPitches } from '../../mechanics/drive/chainLength.ts';
import {
  axleFromPitchesWorking,
  axleSettingWorking,
  chainPitchesWorking,
} from '../../mechanics/drive/chainWorkings.ts';
import { developmentM, gearRatio } from '../../mechanics/drive/gearing.ts';
import { wheelDiameterMm } from '../../mechanics/drive/gearingWheel.ts';
import {
  developmentWorking,
  gainWorking,
  gearInchesWorking,
  speedWorking,
} from '../../mechanics/drive/gearingWorkings.ts';
import { chainWear } from './chainWear.ts';
import { bareAsked, type Calculated, lengthAsked, type Reckoning } from './reckoning.ts';
import { ringReckonings } from './rings.ts';

const ringAsked = bareAsked('ring', 'Teeth on the chainring', [6, 120], { whole: true, first: '36' });
const sprocketAsked = bareAsked('sprocket', 'Teeth on the sprocket', [6, 120], { whole: true, first: '15' });

const gearing: Reckoning = {
  id: 'gearing',
  label: 'Gearing',
  about: 'How far a turn of the cranks goes, and how fast that is.',
  group: 'Drive',
  asks: [
    ringAsked,
    sprocketAsked,
    lengthAsked('width', 'Width of the tyre', [18, 130], { first: '47' }),
    lengthAsked('seat', 'Bead seat', [200, 700], { first: '584' }),
    lengthAsked('rollout', 'Rollout of one turn', [300, 3500], {
      optional: true,
      hint: 'With you on it: it goes before the printed size.',
    }),
    lengthAsked('crank', 'Crank', [50, 300], { first: '170' }),
    bareAsked('cadence', 'Turns a minute', [1, 250], { first: '80' }),
  ],
  compute(given): Calculated {
    const [ring, sprocket] = [given.number('ring'), given.number('sprocket')];
    const rolloutMm = given.maybe('rollout');
    const wheelMm = wheelDiameterMm(
      rolloutMm === undefined
        ? { known: 'designation', widthMm: given.number('width'), beadSeatMm: given.number('seat') }
        : { known: 'rollout', rolloutMm },
    );
    const development = developmentM(gearRatio(ring, sprocket), wheelMm);
    if (development > 50) return { ok: false, reason: 'No rider turns that gear. Check the teeth.' };
    return {
      ok: true,
      results: [
        { label: 'Distance per crank turn', working: developmentWorking(ring, sprocket, wheelMm) },
        { label: 'Gear inches', working: gearInchesWorking(ring, sprocket, wheelMm) },
        { label: 'Gain ratio', working: gainWorking(ring, sprocket, wheelMm, given.number('crank')) },
        { label: 'Speed', working: speedWorking(development, given.number('cadence')) },
      ],
    };
  },
};

const chain: Reckoning = {
  id: 'chain-length',
  label: 'Chain length',
  about: 'Links for a distance between the axles, or where the axle sits for a chain you have.',
  group: 'Drive',
  asks: [
    ringAsked,
    sprocketAsked,
    lengthAsked('axle', 'Spindle to axle', [100, 1500], { optional: true }),
    bareAsked('pitches', 'Links you have', [20, 300], {
      optional: true,
      hint: 'Count every roller; an inch has two.',
    }),
  ],
  compute(given): Calculated {
    const drive = { ringTeeth: given.number('ring'), sprocketTeeth: given.number('sprocket') };
    const [axleMm, pitches] = [given.maybe('axle'), given.maybe('pitches')];
    if (axleMm === undefined && pitches === undefined)
      return { ok: false, reason: 'Give the distance or the links you have.' };
    if (axleMm !== undefined && axleMm < closestAxleMm(drive))
      return { ok: false, reason: 'At that distance ring and sprocket would touch.' };
    if (pitches !== undefined && (pitches < shortestPitches(drive) || pitches > longestPitches(drive)))
      return { ok: false, reason: 'No chain of that many links runs round these two.' };
    return {
      ok: true,
      results: [
        ...(axleMm === undefined
          ? []
          : [{ label: 'Chain, taut', working: chainPitchesWorking(drive, axleMm) }]),
        ...(pitches === undefined
          ? []
          : [
              { label: 'Axle at, taut', working: axleFromPitchesWorking(drive, pitches) },
              { label: 'Set the axle at, with slack', working: axleSettingWorking(drive, pitches) },
            ]),
      ],
      remarks: ['A chain has whole links, and an even number unless a half link is in it.'],
    };
  },
};

export const driveReckonings: readonly Reckoning[] = [gearing, chain, chainWear, ...ringReckonings];
