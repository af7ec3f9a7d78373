import type { Band } from '../../mechanics/band.ts';
import type { Known, Working } from '../../mechanics/working.ts';

/** What a line says about the joint: as it should be, to be minded, or not to be ridden on before it is settled. */
export interface LineVerdict {
  tone: 'good' | 'care' | 'stop';
  word: string;
}

/**
 * A verdict on figures of which one is in no document: never green.
 * @example withoutDocument({ tone: 'good', word: 'Ordinary' }).tone //=> 'care'
 */
export const withoutDocument = (verdict: LineVerdict): LineVerdict =>
  verdict.tone === 'good'
    ? { tone: 'care', word: `${verdict.word}, by figures no document prints` }
    : verdict;

/** Something a computation would need, and how a hand finds it out. */
export interface MissingInput {
  key: MissingKey;
  what: string;
  whereToMeasure: string;
}

/** One figure of a joint in one line of text, with the working that leads to it. */
export interface WorkingLine {
  id: string;
  label: string;
  text: string;
  verdict?: LineVerdict;
  /** What has to be minded with it, a sentence each. */
  warnings?: readonly string[];
  /** What would raise the figure, the strongest first. */
  raises?: readonly string[];
  /** Left out where nothing was computed: the text then says why. */
  working?: Working;
  missing?: readonly MissingInput[];
}

/** How figures are written; the screen gives its own so that commas and units are the person's. */
export interface Saying {
  number(value: number, decimals?: number): string;
  /** One torque, or a range where the second is given and differs. */
  torque(loNm: number, hiNm?: number): string;
  /** An instant as a day. */
  day(ms: number): string;
}

const plainNumber = (value: number, decimals = 1): string => String(Number(value.toFixed(decimals)));

/** Points, newton metres and ISO days: what tests and files read. */
export const plainly: Saying = {
  number: plainNumber,
  torque: (loNm, hiNm = loNm) =>
    plainNumber(loNm) === plainNumber(hiNm)
      ? `${plainNumber(loNm)} N·m`
      : `${plainNumber(loNm)} to ${plainNumber(hiNm)} N·m`,
  day: (ms) => new Date(ms).toISOString().slice(0, 10),
};

/**
 * A band in words; one figure where both ends read alike.
 * @param decimals most decimals shown
 * @example bandText({ lo: 3.5, mid: 5, hi: 6.5 }, plainly) //=> '3.5 to 6.5'
 */
export function bandText({ lo, hi }: Band, say: Saying, decimals = 1): string {
  const [from, to] = [say.number(lo, decimals), say.number(hi, decimals)];
  return from === to ? from : `${from} to ${to}`;
}

const order: readonly Known[] = ['exact', 'seen', 'computed', 'memory', 'proposal'];

/**
 * A chain of reasoning is known no better than its weakest link.
 * @example weakest('seen', 'proposal', 'exact') //=> 'proposal'
 */
export const weakest = (...links: readonly Known[]): Known =>
  order[Math.max(...links.map((known) => order.indexOf(known)))] ?? 'proposal';

const asks = {
  torque: ['Torque', 'Printed on the part beside the screw; otherwise in the part maker’s document.'],
  thread: [
    'Thread of the screw',
    'Outside jaws over the crests, a pitch gauge in the flanks; or the size the part maker names.',
  ],
  screw: ['What the screw is of', 'Magnet test: steel sticks, stainless hardly, aluminium and titanium not.'],
  variant: [
    'Which make of joint it is',
    'The list below tells the makes apart by what is seen on them: bolts, key, lockring.',
  ],
  'property-class': [
    'Grade on the screw head',
    'Raised or stamped on the head: 8.8, 10.9, 12.9, A2-70; or that there is none.',
  ],
  female: ['What it is threaded into', 'A magnet at the mouth of the hole, or the part maker’s document.'],
  'on-thread': ['What is on the threads', 'Take one screw out and look; wipe it on a white cloth.'],
  grip: [
    'Clamped length',
    'From the underside of the head to the face with the thread; depth rod of the caliper.',
  ],
  clamp: [
    'How the clamp closes',
    'Look from the end of the tube: screws on both sides of it, or one slit and a closed side.',
  ],
  'clamp-arms': [
    'Arms of the clamp',
    'From the closed side to the middle of the tube, and to the middle of the screw.',
  ],
  tube: ['Diameter of the tube', 'Outside jaws on the bare tube where the clamp sits.'],
  shim: ['Whether the shim is slit', 'Look along the shim: a saw cut from end to end, or none.'],
  bar: [
    'Where the hands are',
    'Bike level: from the middle of the clamp up to the middle of the grip, and forwards to it.',
  ],
  tool: ['The torque tool', 'Written on the tool: its kind and the ends of its scale.'],
  'tool-range': ['Scale of the tool', 'The smallest and the largest figure on its scale.'],
  lever: ['Length to the hand', 'From the middle of the square to the mark on the grip.'],
  temperature: ['Temperature of the joint', 'A thermometer held to the part, not hung in the room.'],
  applied: ['Torque applied', 'Log it at the bench when the last pass is done.'],
  rotor: ['Rotor size', 'Printed on the rotor, or outside jaws over the braking ring.'],
  'native-rotor': [
    'Rotor the mount takes bare',
    'Stamped at the mount, or the frame or fork maker’s document.',
  ],
} as const satisfies Record<string, readonly [what: string, whereToMeasure: string]>;

export type MissingKey = keyof typeof asks;

/** What to ask for. @example missing('tube').what //=> 'Diameter of the tube' */
export function missing(key: MissingKey): MissingInput {
  const [what, whereToMeasure] = asks[key];
  return { key, what, whereToMeasure };
}

/** What a set of lines lacks, each thing once, in the order it is first needed. */
export function asksOf(lines: readonly WorkingLine[]): MissingInput[] {
  const byKey = new Map(lines.flatMap((line) => line.missing ?? []).map((ask) => [ask.key, ask]));
  return [...byKey.values()];
}

/** A list of what is lacking, for the end of a sentence. @example lackText([missing('tube')]) //=> 'diameter of the tube' */
export const lackText = (lacks: readonly MissingInput[]): string =>
  lacks.map(({ what }) => what.charAt(0).toLowerCase() + what.slice(1)).join(', ');
