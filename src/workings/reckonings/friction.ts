import {
  type FrictionJoint,
  looseningRatio,
  meanBearingDiameterMm,
} from '../../mechanics/screws/torqueLongForm.ts';
import {
  assemblyTorqueWorking,
  looseningWorking,
  tighteningWorking,
} from '../../mechanics/screws/torqueWorkings.ts';
import { given as input } from '../../mechanics/working.ts';
import { propertyClasses, propertyClassRow } from '../../standards/screws/propertyClasses.ts';
import { threadRow } from '../../standards/screws/threads.ts';
import { bearingFaces } from '../../standards/screws/threadsBearing.ts';
import { weakest } from '../joint/line.ts';
import {
  bareAsked,
  type Calculated,
  forceAsked,
  type Reckoned,
  type Reckoning,
  worked,
} from './reckoning.ts';

/** Torque of a screw from friction at its thread and under its head: tightening, loosening, and what the screw stands. */
export const torqueFromFriction: Reckoning = {
  id: 'torque-from-friction',
  label: 'Tightening and loosening torque',
  about: 'What a preload takes to raise and to undo, from friction, and the most the screw itself can take.',
  group: 'Screws',
  asks: [
    {
      key: 'thread',
      label: 'Thread',
      options: bearingFaces.map(({ thread }) => ({ value: thread, label: threadRow(thread).label })),
      first: 'M5',
    },
    {
      key: 'head',
      label: 'Head',
      options: [
        { value: 'socket', label: 'Round, hexagon socket' },
        { value: 'hex', label: 'Hexagon' },
      ],
      first: 'socket',
    },
    {
      key: 'class',
      label: 'Grade on the head',
      options: propertyClasses.map((row) => ({ value: row.propertyClass, label: row.propertyClass })),
      first: '8.8',
    },
    bareAsked('friction', 'Friction', [0.04, 0.6], {
      first: '0.12',
      hint: 'Oiled steel 0.10 to 0.14; greased less, dry more.',
    }),
    forceAsked('preload', 'Preload', [50, 200_000], { optional: true }),
  ],
  compute(given): Calculated {
    const face = bearingFaces.find(({ thread }) => thread === given.choice('thread'));
    if (!face) return { ok: false, reason: 'No head is known for this thread.' };
    const thread = threadRow(face.thread);
    const friction = given.number('friction');
    const headMm = given.choice('head') === 'hex' ? face.hexHeadMm : face.socketHeadMm;
    const joint: FrictionJoint = {
      thread,
      threadFriction: friction,
      bearingFriction: friction,
      bearingDiameterMm: meanBearingDiameterMm(headMm, face.holeMm),
    };
    const row = propertyClassRow(given.choice('class'));
    const most = assemblyTorqueWorking(joint, row.yieldMPa);
    const known = weakest(most.known, row.known, face.known);
    const preloadN = given.maybe('preload');
    const atPreload: Reckoned[] =
      preloadN === undefined
        ? []
        : [
            { label: 'Tightening', working: { ...tighteningWorking(preloadN, joint), known } },
            { label: 'Loosening', working: { ...looseningWorking(preloadN, joint), known } },
          ];
    return {
      ok: true,
      results: [
        { label: 'Limit of the screw itself', working: { ...most, known } },
        ...atPreload,
        {
          label: 'Loosening, share of the tightening torque',
          working: worked(
            looseningRatio(joint),
            '',
            '(0.577·d2·µ + Dkm·µ/2 − P/2π) / (0.577·d2·µ + Dkm·µ/2 + P/2π)',
            [
              input('d', thread.diameterMm, 'mm'),
              input('P', thread.pitchMm, 'mm'),
              input('µ', friction),
              input('Dkm', joint.bearingDiameterMm, 'mm'),
            ],
            `VDI 2230 equation form. Heads: ${face.source}`,
            known,
          ),
        },
      ],
      remarks: ['The part it goes into may take far less: the figure printed on the part goes first.'],
    };
  },
};
