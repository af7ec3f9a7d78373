import { type JointKind, jointKinds } from './jointKinds.ts';
import type { WorkId } from './jointWork.ts';
import type { Sourced } from './known.ts';

/** What a step does at a joint, as far as its place in the order depends on it. */
export type Worked = 'get' | 'bond' | 'together' | 'locker' | 'torque' | WorkId;

/** Where it is done: a kind of joint, a sleeve in a shell, or a piece that has yet to be got. */
export type WorkPlace = JointKind | 'sleeve' | 'piece';

/**
 * Which joints of a bike a pair is about: one joint; two that share a part other than frame and fork, or belong to one
 * wheel or one end; two that share a part; any two; or a piece and the joints it goes into.
 */
export type OrderScope = 'joint' | 'end' | 'share' | 'bike' | 'part';

/** What has to be done before what, and why. */
export interface WorkPair extends Sourced {
  readonly before: readonly WorkPlace[];
  /** Every work there, where left out. */
  readonly doing?: readonly Worked[];
  readonly after: readonly WorkPlace[];
  readonly thenDoing?: readonly Worked[];
  readonly within: OrderScope;
  readonly because: string;
}

const practice: Sourced = { source: 'common practice, no source', known: 'proposal' };
const everywhere: readonly WorkPlace[] = [...jointKinds.map(({ kind }) => kind), 'sleeve'];

/** Two things done at the same joint. */
const atOne = (
  doing: Worked | readonly Worked[],
  then: Worked | readonly Worked[],
  because: string,
): WorkPair => ({
  ...{
    before: everywhere,
    doing: [doing].flat() as Worked[],
    after: everywhere,
    thenDoing: [then].flat() as Worked[],
  },
  ...{ within: 'joint', because, ...practice },
});

type At = readonly [places: WorkPlace | readonly WorkPlace[], doing?: Worked | readonly Worked[]];

const pair = (within: OrderScope, [before, doing]: At, [after, then]: At, because: string): WorkPair => ({
  before: [before].flat() as WorkPlace[],
  ...(doing ? { doing: [doing].flat() as Worked[] } : {}),
  after: [after].flat() as WorkPlace[],
  ...(then ? { thenDoing: [then].flat() as Worked[] } : {}),
  ...{ within, because, ...practice },
});

const axleJoints: readonly WorkPlace[] = ['front-axle', 'thru-axle', 'rear-axle'];
const cranks: readonly WorkPlace[] = ['crank', 'crank-pinch'];
const stems: readonly WorkPlace[] = ['stem-quill', 'stem-steerer'];
const driven: readonly WorkPlace[] = ['freewheel', 'sprocket', 'lockring'];

/** The order of work as pairs, each with its reason. What no pair forbids may be done in any order. */
export const workOrder: readonly WorkPair[] = [
  pair('part', ['piece', 'get'], [everywhere], 'A piece has to be there, and measured, before it goes in.'),

  atOne('count', ['together', 'slack'], 'A chain is counted and cut before it is joined.'),
  atOne('bond', 'together', 'A retaining compound goes on before the faces come together.'),
  atOne('together', 'torque', 'What is tightened sits in its place first.'),
  atOne('locker', 'torque', 'Threadlocker goes on the thread before it is tightened, not after.'),
  atOne(
    'together',
    ['tension', 'true', 'dish', 'play', 'turns', 'slack', 'cable', 'bleed', 'pads'],
    'What is adjusted or checked is put together first.',
  ),
  atOne('torque', ['turns', 'cable', 'pads'], 'Tightening moves it: it is judged when it is tight.'),
  atOne('tension', ['true', 'dish'], 'A wheel that is not tight does not stay true.'),
  atOne('true', 'dish', 'Dish is read on a wheel that runs true.'),
  atOne('bleed', 'pads', 'Bleeding moves the pads.'),

  pair('end', ['spokes'], ['bead'], 'The tyre and its tape cover the nipples: lace, tension and true first.'),
  pair('end', ['spokes'], ['rotor'], 'A rotor is in the way of the spokes, and oil from the work spoils it.'),
  pair('end', ['spokes', 'together'], [driven], 'Spokes do not go into the hub past what sits on it.'),
  pair('end', ['sprocket'], ['lockring'], 'The lockring holds the sprocket down.'),
  pair(
    'end',
    ['bead'],
    [axleJoints],
    'A tyre is seated and watched on the wheel alone, where both sides are seen all round.',
  ),
  pair('end', [['rotor', ...driven]], [axleJoints], 'In the bike no wrench fits on it squarely.'),
  pair('end', ['spokes'], [axleJoints], 'A wheel is finished before it is hung.'),

  pair('bike', ['crown-race'], ['fork'], 'The race is pressed on with the fork out of the frame.'),
  pair('bike', ['headset', 'together'], ['fork'], 'The cups go into an empty head tube.'),
  pair('bike', ['fork'], [stems], 'The stem goes on the steerer of a fork that is in the frame.'),
  pair('bike', ['fork'], ['headset', 'play'], 'Play shows with the fork in the frame.'),
  pair(
    'bike',
    [stems, 'together'],
    ['headset', 'play'],
    'Play is taken up against the stem, or with it in place.',
  ),
  pair(
    'bike',
    ['headset', 'play'],
    ['stem-steerer', 'torque'],
    'The bolts of the stem hold the play where it was set: they come last.',
  ),
  pair('bike', ['fork'], ['front-axle'], 'The wheel is hung in a fork that is in the frame.'),
  pair('bike', [stems, 'together'], ['bar-clamp'], 'The bar goes into the stem.'),
  pair('bike', ['bar-clamp'], ['lever-clamp', 'torque'], 'Levers are set on a bar that will not move again.'),
  pair('bike', ['lever-clamp', 'together'], ['grip'], 'A lever cannot slide on past a grip.'),

  pair('share', ['sleeve'], ['bottom-bracket'], 'The cups go into the sleeve, and load it.'),
  pair('bike', ['bottom-bracket'], [cranks], 'Cranks go on bearings that sit and turn freely.'),
  pair('bike', [cranks], ['pedal', 'torque'], 'A pedal is tightened against a crank that holds.'),
  pair(
    'bike',
    [['rear-axle', ...cranks, 'chainring', 'freewheel', 'sprocket'], 'together'],
    ['chain'],
    'The chain is counted over the ring and the sprocket, with the axle in its place.',
  ),
  pair(
    'bike',
    ['chain', 'slack'],
    ['rear-axle', 'torque'],
    'The axle moves to set the slack: its nuts are tightened after that.',
  ),

  pair('end', ['brake-mount'], ['caliper'], 'The caliper is bolted to the mount.'),
  pair(
    'end',
    [axleJoints],
    ['caliper', ['torque', 'pads']],
    'The caliper is set to a rotor in its final place.',
  ),
  pair('end', ['lever-clamp'], ['caliper', 'bleed'], 'A brake is bled with the lever where it stays.'),
  pair('end', ['lever-clamp'], ['cable-anchor'], 'The cable is cut to a lever that stays where it is.'),
  pair(
    'end',
    ['caliper', 'torque'],
    ['cable-anchor'],
    'The cable pulls on the caliper, so the caliper is tight first.',
  ),
  pair('end', ['cable-anchor'], ['caliper', 'pads'], 'The cable sets where the pads rest.'),
  pair('end', [axleJoints], ['mudguard', 'torque'], 'A mudguard is set to the tyre it covers.'),
];
