import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { BICYCLE_ROLLER_MM, chains } from '../../standards/interfaces/chains.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';

const BOLT_CIRCLE_SLACK_MM = 0.4;
/** Chains of nine sprockets and more, 2.18 inside, run on teeth cut for 2.38; 2.38 on 3.175 does not. */
const CHAIN_SLACK_MM = 0.25;
/** A chain this much wider runs, with more play to the side. */
const LOOSE_CHAIN_MM = 0.5;

function ringOnSpider(spider: Face, ring: Face): Judgement {
  const asks = [spider, ring].flatMap((face) =>
    ['boltCircleMm', 'boltsCount'].filter((key) => !readingOf(face, key)).map((key) => askFor(face, key)),
  );
  const circles = [readingOf(spider, 'boltCircleMm'), readingOf(ring, 'boltCircleMm')] as const;
  const bolts = [readingOf(spider, 'boltsCount'), readingOf(ring, 'boltsCount')] as const;
  if (!circles[0] || !circles[1] || !bolts[0] || !bolts[1])
    return unknown('Bolt circle or number of bolts is not known yet.', asks);
  const offMm = Math.abs(circles[0].mid - circles[1].mid);
  return bolts[0].mid === bolts[1].mid && offMm <= BOLT_CIRCLE_SLACK_MM
    ? {
        meets: 'yes',
        because: `Ring and spider both have ${bolts[1].mid} bolts on ${mmText(circles[1].mid)}.`,
      }
    : {
        meets: 'no',
        because: `The ring has ${bolts[1].mid} bolts on ${mmText(circles[1].mid)}, the spider ${bolts[0].mid} on ${mmText(circles[0].mid)}.`,
      };
}

/** Wider inside than any bicycle chain, and then its rollers are fatter as well. */
const MACHINE_CHAIN_MM = 6;

function isMachineChain(chain: Face): boolean {
  const rollerMm = chains.find(({ id }) => id === chain.standard)?.rollerMm;
  const innerMm = readingOf(chain, 'chainWidthMm')?.mid;
  return (rollerMm ?? Number.NaN) > BICYCLE_ROLLER_MM || (innerMm ?? Number.NaN) > MACHINE_CHAIN_MM;
}

function chainOnTeeth(chain: Face, teeth: Face): Judgement {
  if (isMachineChain(chain))
    return {
      meets: 'no',
      because: `This is an industrial chain: its rollers are too big for teeth cut for ${mmText(BICYCLE_ROLLER_MM)}.`,
      final: true,
    };
  const inner = readingOf(chain, 'chainWidthMm');
  const cut = readingOf(teeth, 'chainWidthMm');
  if (!inner || !cut)
    return unknown('The inner width of the chain or of the teeth is not known yet.', [
      ...(inner ? [] : [askFor(chain, 'chainWidthMm')]),
      ...(cut ? [] : [askFor(teeth, 'chainWidthMm')]),
    ]);
  const gapMm = { lo: inner.lo - cut.hi, mid: inner.mid - cut.mid, hi: inner.hi - cut.lo };
  const words = `The chain is ${mmText(inner.mid)} wide inside, the teeth are cut for ${mmText(cut.mid)}`;
  if (gapMm.mid < -CHAIN_SLACK_MM) return { meets: 'no', because: `${words}: it rides up on them.`, gapMm };
  return {
    meets: 'yes',
    because: `${words}: it runs.`,
    gapMm,
    notes:
      gapMm.mid > LOOSE_CHAIN_MM
        ? ['A wide chain on narrow teeth runs with side play; where widths are mixed, choose the wide chain.']
        : [],
  };
}

const chainRule = (topic: string, second: FaceKind): Rule => ({
  topic,
  first: 'chain',
  second,
  risk: 'A chain that climbs the teeth comes off, at the worst moment under the full weight of a leg.',
  source: 'wiki book’s page on chain sizes: wide chain on narrow teeth works, the other way not',
  known: 'seen',
  judge: chainOnTeeth,
});

/** Chainring, chain, sprocket. */
export const driveRules: readonly Rule[] = [
  {
    topic: 'ring-on-spider',
    first: 'spider',
    second: 'ring-mount',
    risk: 'A ring on fewer bolts than it has holes breaks at the next one.',
    source: 'bicycle encyclopaedia, chainring bolt circle pages',
    known: 'seen',
    judge: ringOnSpider,
  },
  chainRule('chain-on-ring', 'ring-teeth'),
  chainRule('chain-on-sprocket', 'sprocket-teeth'),
];
