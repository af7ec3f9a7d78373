import { coldSet, spacingSlack } from '../../standards/interfaces/spacings.ts';
import type { Known } from '../../standards/known.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import type { Judgement, OneWayFix } from '../verdict.ts';

const frameEnds = 'hub column on frame ends: 1 mm over an end is about 2°, a set axle beats washers';
const practice = { source: 'common practice, no source', known: 'proposal' as Known };

/** More than this of washers leaves too little axle in the frame end. */
const WASHERS_MOST_MM = 12;

function coldSetting(ends: Face, fromMm: number, toMm: number): OneWayFix[] {
  const material = traitOf(ends, 'material');
  if (material !== 'steel' || traitOf(ends, 'end') === 'front') return [];
  if (toMm - fromMm > coldSet.mostMm) return [];
  const far = toMm - fromMm > coldSet.usualMm;
  return [
    {
      change: 'cold-set',
      faceId: ends.faceId,
      key: 'spacingMm',
      before: fromMm,
      after: toMm,
      sideEffects: [
        `Each dropout moves out by ${mmText((toMm - fromMm) / 2)}.`,
        'The dropouts are no longer parallel: align them, 1 mm over a dropout is about 2°.',
      ],
      caution: far
        ? `${mmText(toMm - fromMm)} is more than usual, ${mmText(coldSet.usualMm)}: take it to a qualified frame builder, and check the bridge brazing afterwards.`
        : 'Steel only, in small steps, checked against a string; a qualified frame builder has the tools.',
      source: coldSet.source,
      known: coldSet.known,
    },
  ];
}

/** A hub that has to lose more has another place for its bearings: our own limit. */
const CUT_MOST_MM = 20;

function hubCutting(hub: Face, fromMm: number, toMm: number): OneWayFix[] {
  if (fromMm - toMm > CUT_MOST_MM) return [];
  return [
    {
      change: 'cut-hub',
      faceId: hub.faceId,
      key: 'spacingMm',
      before: fromMm,
      after: toMm,
      sideEffects: [
        `Off the drive end alone the chainline moves out by ${mmText((fromMm - toMm) / 2)} and a rotor keeps its gap.`,
        `Off the left end a rotor loses up to ${mmText(fromMm - toMm)} of gap and meets the frame.`,
        'The rim has to be pulled back to the middle by half the difference of the two cuts.',
      ],
      caution:
        'Only where spacers or an axle end can be shortened, never on a gear or back-pedal hub; a bearing seat or a thread must not be touched.',
      ...practice,
    },
  ];
}

function hubBetweenEnds(ends: Face, hub: Face): Judgement {
  const inside = readingOf(ends, 'spacingMm');
  const over = readingOf(hub, 'spacingMm');
  if (!inside || !over)
    return unknown('The hub width or the dropout spacing is not known yet.', [
      ...(inside ? [] : [askFor(ends, 'spacingMm')]),
      ...(over ? [] : [askFor(hub, 'spacingMm')]),
    ]);
  const gapMm = { lo: inside.lo - over.hi, mid: inside.mid - over.mid, hi: inside.hi - over.lo };
  const widths = `The hub is ${mmText(over.mid)} wide, the dropouts are ${mmText(inside.mid)} apart`;
  if (Math.abs(gapMm.mid) <= spacingSlack.slackMm)
    return { meets: 'yes', because: `${widths}: a little springing by hand is enough.`, gapMm };
  if (gapMm.mid > 0) {
    if (gapMm.mid > WASHERS_MOST_MM)
      return { meets: 'no', because: `${widths}: too much for washers.`, gapMm };
    return {
      meets: 'with-spacers',
      because: `${widths}: it needs ${mmText(gapMm.mid / 2)} of washers on each side.`,
      gapMm,
      spacers: { what: 'axle-washer', thicknessMm: gapMm.mid / 2, driveCount: 1, otherCount: 1 },
      notes: [
        'An axle set to the right width beats a stack of washers; keep a full diameter of thread in the nut.',
      ],
      source: frameEnds,
      known: 'seen',
    };
  }
  const cold = coldSetting(ends, inside.mid, over.mid);
  const asks = traitOf(ends, 'material') === undefined ? [askFor(ends, 'material')] : [];
  return {
    meets: 'no',
    because: `${widths}: the hub is ${mmText(-gapMm.mid)} too wide.`,
    gapMm,
    oneWay: [...cold, ...hubCutting(hub, over.mid, inside.mid)],
    asks,
  };
}

/** Hubs between frame and fork ends. */
export const spacingRules: readonly Rule[] = [
  {
    topic: 'hub-between-ends',
    first: 'end-spacing',
    second: 'hub-spacing',
    risk: 'A hub forced in bends the dropouts and the axle; one pulled in by the nuts twists the stays.',
    source: spacingSlack.source,
    known: spacingSlack.known,
    judge: hubBetweenEnds,
  },
];
