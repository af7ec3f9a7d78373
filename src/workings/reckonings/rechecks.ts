import { readRecheck } from '../../mechanics/screws/recheckReading.ts';
import { settlingLoss } from '../../mechanics/screws/settling.ts';
import { given as input } from '../../mechanics/working.ts';
import { elasticMaterials } from '../../standards/interfaces/elasticMaterials.ts';
import { embedment, embedmentSource } from '../../standards/screws/embedment.ts';
import { threadRow, threads } from '../../standards/screws/threads.ts';
import { weakest } from '../joint/line.ts';
import { recheckReasons, recheckVerdicts } from '../joint/recheckLine.ts';
import {
  bareAsked,
  type Calculated,
  forceAsked,
  lengthAsked,
  type Reckoning,
  torqueAsked,
  worked,
} from './reckoning.ts';

const solid = threads.filter(({ diameterMm }) => diameterMm <= 16);

const settling: Reckoning = {
  id: 'settling',
  label: 'Settling',
  about: 'How much preload goes while the faces bed in, before anything has turned.',
  group: 'Re-checks',
  asks: [
    {
      key: 'thread',
      label: 'Thread',
      options: solid.map(({ id, label }) => ({ value: id, label })),
      first: 'M5',
    },
    forceAsked('preload', 'Preload', [50, 200_000], { first: '5000' }),
    lengthAsked('grip', 'Clamped length', [1, 300]),
    lengthAsked('head', 'Outside of the head’s face', [3, 40]),
    lengthAsked('hole', 'Hole under the head', [2, 30]),
    {
      key: 'parts',
      label: 'Clamped parts are of',
      options: Object.entries(elasticMaterials).map(([value, { label }]) => ({ value, label })),
      first: 'aluminium',
    },
    {
      key: 'roughness',
      label: 'Surfaces',
      options: [
        { value: 'fine', label: 'Fine, as ground' },
        { value: 'medium', label: 'Medium, as turned' },
        { value: 'coarse', label: 'Coarse, as cast or filed' },
      ],
      first: 'medium',
    },
    {
      key: 'load',
      label: 'The joint is loaded',
      options: [
        { value: 'shear', label: 'Across the screw' },
        { value: 'tension', label: 'Along the screw' },
      ],
      first: 'shear',
    },
    bareAsked('faces', 'Places where clamped parts touch', [0, 12], { whole: true, first: '1' }),
    {
      key: 'soft',
      label: 'Paint, paste or carbon between',
      options: [
        { value: 'no', label: 'No' },
        { value: 'yes', label: 'Yes' },
      ],
      first: 'no',
    },
  ],
  compute(given): Calculated {
    const row = embedment.find(
      ({ roughness, load }) => roughness === given.choice('roughness') && load === given.choice('load'),
    );
    if (!row) return { ok: false, reason: 'No guide value is known for such surfaces.' };
    const [headMm, holeMm] = [given.number('head'), given.number('hole')];
    if (holeMm >= headMm) return { ok: false, reason: 'The hole has to be smaller than the head.' };
    const parts = elasticMaterials[given.choice('parts') as keyof typeof elasticMaterials];
    const preloadN = given.number('preload');
    const loss = settlingLoss(
      {
        thread: threadRow(given.choice('thread')),
        gripMm: given.number('grip'),
        ...{ headMm, holeMm },
        screwModulusGpa: elasticMaterials.steel.modulusGpa,
        partModulusGpa: parts.modulusGpa,
        heads: 1,
        innerJoints: given.number('faces'),
        softLayer: given.choice('soft') === 'yes',
      },
      row,
      preloadN,
    );
    const known = weakest(loss.working.known, embedmentSource.known);
    return {
      ok: true,
      results: [
        { label: 'Preload lost', working: { ...loss.working, known } },
        {
          label: 'Preload left',
          working: worked(
            loss.leftN,
            'N',
            'F0 − F lost',
            [input('F0', preloadN, 'N'), input('F lost', loss.lostN, 'N')],
            embedmentSource.source,
            known,
          ),
        },
      ],
      remarks: ['Short screws and many faces lose most: the reason for a second pull after the first ride.'],
    };
  },
};

const recheck: Reckoning = {
  id: 'recheck-reading',
  label: 'Reading of a re-check',
  about: 'What it means where a bolt first moved.',
  group: 'Re-checks',
  asks: [
    {
      key: 'way',
      label: 'How it was looked at',
      options: [
        { value: 'tightening', label: 'Pulled towards the target' },
        { value: 'loosening', label: 'Read where it broke loose, loosening' },
      ],
      first: 'tightening',
    },
    torqueAsked('installed', 'Torque it had been given', [0.5, 300]),
    torqueAsked('moved', 'It first moved at', [0, 400], {
      optional: true,
      hint: 'Empty: the target came without movement.',
    }),
    {
      key: 'pitch',
      label: 'Thread',
      options: [
        { value: 'coarse', label: 'Coarse' },
        { value: 'fine', label: 'Fine, as on an axle' },
      ],
      first: 'coarse',
    },
  ],
  compute(given): Calculated {
    const installedNm = given.number('installed');
    const movedAtNm = given.maybe('moved');
    const loosening = given.choice('way') === 'loosening';
    if (loosening && movedAtNm === undefined)
      return { ok: false, reason: 'Loosening always moves it: type where it broke loose.' };
    const reading = readRecheck(
      loosening
        ? {
            way: 'loosening',
            installedNm,
            movedAtNm: movedAtNm ?? 0,
            finePitch: given.choice('pitch') === 'fine',
          }
        : { way: 'tightening', installedNm, movedAtNm: movedAtNm ?? null },
    );
    const share =
      reading.working ??
      worked(
        movedAtNm === undefined ? 1 : movedAtNm / installedNm,
        '',
        'T moved / T given',
        [
          ...(movedAtNm === undefined ? [] : [input('T moved', movedAtNm, 'N·m')]),
          input('T given', installedNm, 'N·m'),
        ],
        'at or above what a sound joint shows, no share of the preload can be told',
        'proposal',
      );
    return {
      ok: true,
      results: [
        {
          label: reading.working ? 'Share of the preload that seems left' : 'Share of the torque',
          working: share,
        },
      ],
      remarks: [`${recheckVerdicts[reading.verdict].word}. ${recheckReasons[reading.reason]}.`],
    };
  },
};

export const recheckReckonings: readonly Reckoning[] = [settling, recheck];
