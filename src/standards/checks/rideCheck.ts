import type { JointArea } from '../jointKinds.ts';
import type { Sourced } from '../known.ts';

export interface RideCheckItem extends Sourced {
  readonly id: string;
  /** The state that is wanted, so that nodding at it means something. */
  readonly words: string;
  readonly area: JointArea;
  /** A finding here may not be put off until after the ride. */
  readonly neverDefer: boolean;
}

export interface RideCheckGroup {
  readonly id: string;
  readonly title: string;
  readonly items: readonly RideCheckItem[];
}

const walk: Sourced = {
  source: 'M-shaped walk round the bike, club and college training sheets',
  known: 'seen',
};
const drop: Sourced = {
  source: "generic owner's manual: lift the front a little, let it drop, listen",
  known: 'seen',
};
const retention: Sourced = { source: '16 CFR 1512.12, locks must show their state and hold', known: 'seen' };
const spokes: Sourced = { source: '16 CFR 1512.11, no spoke missing, tyre clear by 1.6 mm', known: 'seen' };
const grips: Sourced = { source: '16 CFR 1512.6, end plugs; secondary article', known: 'seen' };
const post: Sourced = { source: '16 CFR 1512.15, mark at two post diameters', known: 'seen' };
const rim: Sourced = { source: 'rim wear notes: replace at 1.0 mm of wall', known: 'seen' };
const leverSide: Sourced = {
  source: 'trading-standards sheet on lever sides; other countries differ',
  known: 'seen',
};

const item = (
  id: string,
  area: JointArea,
  when: 'now' | 'may-wait',
  words: string,
  sourced: Sourced = walk,
): RideCheckItem => ({ id, words, area, neverDefer: when === 'now', ...sourced });

/** The two wheels are looked at in the same way, each with its own ids. */
const wheel = (end: 'front' | 'rear'): RideCheckItem[] => [
  item(`${end}-axle`, 'wheels', 'now', 'Axle fully seated and locked; lever or nuts undisturbed', retention),
  item(`${end}-hub`, 'wheels', 'now', 'Rim pulled sideways: no knock from the hub'),
  item(
    `${end}-spokes`,
    'wheels',
    'now',
    'All spokes there and tight; the rim runs true and clear of frame and pads',
    spokes,
  ),
  item(`${end}-rim`, 'wheels', 'now', 'Rim without cracks or bulges, wall thicker than its limit', rim),
  item(
    `${end}-tyre`,
    'wheels',
    'now',
    'Tyre at its pressure, not cut, bead line even on both sides, turning the way it is marked',
  ),
  item(
    `${end}-brake`,
    'brakes',
    'now',
    'Brake stops the wheel with the lever clear of the bar; pads thick enough',
  ),
  item(
    `${end}-rotor`,
    'brakes',
    'now',
    'Rotor straight, clean, bolts all there, not rubbing; hose or cable whole and clear',
  ),
];

/**
 * The check before a ride: look, then confirm, in the order one walks round the bike. It clears one short
 * ride, no more. A wheel without a rotor has its rim-brake track looked at under the same item.
 */
export const rideCheck: readonly RideCheckGroup[] = [
  { id: 'front-wheel', title: 'Front wheel', items: wheel('front') },
  {
    id: 'fork-and-bars',
    title: 'Fork and bars',
    items: [
      item('fork', 'steering', 'now', 'Fork legs, crown and steerer without cracks, dents or lifted paint'),
      item(
        'headset',
        'steering',
        'now',
        'Front wheel held, by its brake or against a wall, and the bike rocked: no knock; bars swing freely',
      ),
      item('stem', 'steering', 'now', 'Front wheel held between the knees: the bars do not twist against it'),
      item('bar', 'steering', 'now', 'Bar does not roll in its clamp; face-plate gaps even'),
      item('grips', 'steering', 'now', 'Grips do not turn; both bar ends closed', grips),
      item(
        'levers',
        'brakes',
        'now',
        'Levers tight and in reach; you know which is the front brake',
        leverSide,
      ),
      item(
        'head-tube',
        'steering',
        'now',
        'Frame behind the head tube without cracks, ripples or lifted paint',
      ),
    ],
  },
  {
    id: 'cranks',
    title: 'Cranks',
    items: [
      item('frame', 'other', 'now', 'No cracks in tubes or joints, above all near modifications'),
      item('bottom-bracket', 'drive', 'may-wait', 'Cranks pushed sideways: no knock, no grinding'),
      item('crank-arms', 'drive', 'now', 'Neither arm moves on the spindle'),
      item('pedals', 'drive', 'now', 'Pedals fully tight and spinning freely'),
      item('chainring', 'drive', 'may-wait', 'Chainring bolts all there, ring not bent'),
      item(
        'chain',
        'drive',
        'may-wait',
        'Chain runs one full turn without a stiff link or a skip, with a little slack',
      ),
    ],
  },
  {
    id: 'saddle',
    title: 'Saddle',
    items: [
      item('saddle-clamp', 'saddle', 'now', 'Saddle does not tip or twist under both hands'),
      item(
        'post-depth',
        'saddle',
        'now',
        'Seatpost past its minimum-insertion line and the frame’s minimum',
        post,
      ),
      item('post-clamp', 'saddle', 'now', 'Post does not turn or sink; height mark where it was'),
      item('rack-and-guards', 'other', 'now', 'Rack, mudguards and bags fixed and clear of both wheels'),
    ],
  },
  {
    id: 'rear-wheel',
    title: 'Rear wheel',
    items: [
      ...wheel('rear'),
      item('sprockets', 'drive', 'may-wait', 'Sprocket or cassette tight, nothing reaches the spokes'),
      item('dropouts', 'wheels', 'now', 'Dropouts without cracks; axle seated on bare metal as it was'),
    ],
  },
  {
    id: 'then',
    title: 'Final check',
    items: [
      item('drop', 'other', 'now', 'Lift each end about 10 cm and drop it: no rattles', drop),
      item('walk-brakes', 'brakes', 'now', 'At walking pace each brake holds the bike on its own'),
      item('marks', 'other', 'now', 'Paint marks on safety-critical bolts still line up'),
      item('local-rules', 'other', 'may-wait', 'Lights, reflectors and bell as the local rules ask'),
      item('short-ride', 'other', 'now', 'A short slow ride close to home, then look again'),
    ],
  },
];
