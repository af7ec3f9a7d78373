import type { DemoPen } from './demo.ts';
import { bar, buildAll, celsius, id, joint, judged, mL, mm, printed, table } from './demoWords.ts';
import { magpieParts } from './magpieParts.ts';

const BIKE = 'magpie';

const joints = [
  joint(
    BIKE,
    'm-j-spokes-front',
    'spokes',
    'Front wheel spokes',
    ['m-hub-front-b', 'm-rim-front'],
    null,
    [],
    [],
  ),
  joint(BIKE, 'm-j-spokes-rear', 'spokes', 'Rear wheel spokes', ['m-hub-rear', 'm-rim-rear'], null, [], []),
  joint(BIKE, 'm-j-bead-front', 'bead', 'Front tyre on rim', ['m-tyre-front', 'm-rim-front'], null, [], []),
  joint(BIKE, 'm-j-bead-rear', 'bead', 'Rear tyre on rim', ['m-tyre-rear', 'm-rim-rear'], null, [], []),
  joint(
    BIKE,
    'm-j-rotor',
    'rotor',
    'Rotor on front hub',
    ['m-rotor', 'm-hub-front-b'],
    ['M5', 6],
    [judged(4)],
    [{ kind: 'threadlocker' }],
  ),
  joint(BIKE, 'm-j-freewheel', 'freewheel', 'Freewheel on rear hub', ['m-sprocket', 'm-hub-rear'], null, []),
  joint(BIKE, 'm-j-crown', 'crown-race', 'Crown race on fork', ['m-headset', 'm-fork'], null, []),
  joint(BIKE, 'm-j-headset', 'headset', 'Headset cups in head tube', ['m-headset', 'm-frame'], null, []),
  joint(
    BIKE,
    'm-j-stem',
    'stem-steerer',
    'Stem on steerer',
    ['m-stem', 'm-fork'],
    ['M5', 2],
    [printed('m-stem', 5)],
    [{ kind: 'shim', partId: id('m-shim-steerer') }],
  ),
  joint(
    BIKE,
    'm-j-bb',
    'bottom-bracket',
    'Bottom bracket cups',
    ['m-bb', 'm-frame'],
    null,
    [table(38, 'threaded cups, 33.9 to 40.7')],
    [{ kind: 'spacer', partId: id('m-spacers') }, { kind: 'grease' }],
  ),
  joint(
    BIKE,
    'm-j-mount',
    'brake-mount',
    'Brake adapter on fork',
    ['m-adapter', 'm-fork'],
    ['M6', 2],
    [judged(7)],
    [{ kind: 'threadlocker' }],
  ),
  joint(
    BIKE,
    'm-j-post',
    'seatpost',
    'Seatpost in seat tube',
    ['m-post', 'm-frame'],
    ['M6', 1],
    [table(12, 'seat collar, metal, 9.6 to 14.1')],
    [{ kind: 'shim', partId: id('m-shim-post') }, { kind: 'grease' }],
  ),
  joint(BIKE, 'm-j-rails', 'saddle-rails', 'Saddle on post', ['f-saddle', 'm-post'], ['M6', 2], [judged(10)]),
  joint(
    BIKE,
    'm-j-axle-front',
    'front-axle',
    'Front axle nuts',
    ['m-hub-front-b', 'm-fork'],
    ['M9 × 1', 2],
    [table(24, 'front axle nuts, 20.3 to 27.1')],
  ),
  joint(
    BIKE,
    'm-j-axle-rear',
    'rear-axle',
    'Rear axle nuts',
    ['m-hub-rear', 'm-frame'],
    ['3/8 × 26', 2],
    [table(30, 'rear axle nuts, 27.1 to 33.9')],
  ),
  joint(
    BIKE,
    'm-j-ring',
    'chainring',
    'Chainring on spider',
    ['m-ring', 'm-cranks'],
    ['M8', 4],
    [table(9, 'chainring bolts, steel, 7.9 to 14')],
  ),
  joint(
    BIKE,
    'm-j-pinch',
    'crank-pinch',
    'Left crank pinch bolts',
    ['m-cranks', 'm-bb'],
    ['M5', 2],
    [printed('m-cranks', 12, 14)],
  ),
  joint(
    BIKE,
    'm-j-pedals',
    'pedal',
    'Pedals in cranks',
    ['f-pedals', 'm-cranks'],
    ['9/16 × 20', 2],
    [table(36, 'pedals, 34.7 to 39.5')],
  ),
  joint(
    BIKE,
    'm-j-bar',
    'bar-clamp',
    'Bar in stem',
    ['m-bar', 'm-stem'],
    ['M5', 4],
    [printed('m-stem', 5)],
    [{ kind: 'shim', partId: id('m-shim-bar') }],
  ),
  joint(
    BIKE,
    'm-j-grips',
    'grip',
    'Lock-on grips',
    ['m-grips', 'm-bar'],
    ['M4', 4],
    [{ source: 'none' }],
    [],
  ),
  joint(
    BIKE,
    'm-j-caliper',
    'caliper',
    'Caliper on adapter',
    ['m-caliper', 'm-adapter'],
    ['M6', 2],
    [judged(7)],
  ),
];

const torques: Record<string, number> = { 'm-j-stem': 5, 'm-j-bb': 38, 'm-j-mount': 7 };

/** The bike on the bench: half built, a tyre settling, threadlocker curing, a saddle and pedals taken off the other. */
export async function magpie(pen: DemoPen): Promise<void> {
  const bikeId = id(BIKE);
  pen.at(6, 0);
  await pen.write({
    type: 'start-bike',
    bikeId,
    name: 'Magpie',
    about: 'A steel track frame turned into an all-weather town bike out of what was in the boxes',
    demo: true,
  });
  for (const part of magpieParts) {
    const place = part.shelf ? { on: 'shelf' as const, tag: part.shelf } : { on: 'bike' as const, bikeId };
    const { key, shelf: _shelf, ...about } = part;
    await pen.write({ type: 'add-part', partId: id(key), place, ...about });
  }
  pen.at(5, 0);
  for (const key of ['f-saddle', 'f-pedals']) {
    await pen.write({
      type: 'move-part',
      partId: id(key),
      to: { on: 'bike', bikeId },
      why: 'wanted on Magpie',
    });
  }
  pen.at(4, 30);
  await pen.write({
    type: 'change-part',
    partId: id('m-frame'),
    cut: 'cold-set',
    where: 'Rear ends, spacing',
    before: mm(120),
    after: mm(130),
    leftWords: 'steel stays, no crease seen; ends squared again afterwards',
    how: 'Spread in small steps with a threaded rod, each side measured against a string to the head tube',
    why: 'The rear hub is 130 over the locknuts',
    rulesOut: 'Hubs of 120 without spacers',
    inspection: {
      everyDays: 90,
      everyKm: 500,
      words: 'Look for cracks and lifted paint at bridge and dropouts, in raking light',
    },
  });
  for (const made of joints) await pen.write(made);
  await pen.write({ type: 'plan-steps', bikeId });
  pen.at(1, 60);
  await buildAll(pen, BIKE, torques, {
    toolFor: (torqueNm) => (torqueNm <= 10 ? 'tool-small' : 'tool-large'),
    until: (title, kind) => title === 'Seatpost in seat tube' && kind === 'torque',
  });
  const steps = (await pen.read('bench', { bikeId }))?.steps ?? [];
  const seatRear = steps.find(({ jointId, kind }) => jointId === id('m-j-bead-rear') && kind === 'seat');
  const rear = { jointId: id('m-j-bead-rear') };
  pen.minutesAgo(95);
  await pen.write({
    type: 'mark-seal',
    ...rear,
    ...(seatRear ? { stepId: seatRear.stepId } : {}),
    mark: {
      mark: 'seated',
      dry: true,
      beadLine: 'even',
      reading: { pressure: bar(2.5), temperature: celsius(19) },
    },
  });
  await pen.write({
    type: 'mark-seal',
    ...rear,
    mark: { mark: 'sealant', sealantKind: 'latex, water-borne', amount: mL(65) },
  });
  await pen.write({ type: 'mark-seal', ...rear, mark: { mark: 'spun-and-shaken' } });
  await pen.write({ type: 'mark-seal', ...rear, mark: { mark: 'laid-left' } });
  pen.minutesAgo(40);
  await pen.write({
    type: 'mark-seal',
    ...rear,
    mark: { mark: 'reading', reading: { pressure: bar(2.35), temperature: celsius(19) } },
    note: 'bubbles at the valve have stopped',
    lookAgainMs: 60 * 60_000,
  });
  pen.minutesAgo(30);
  await pen.write({ type: 'hand-tighten', jointId: id('m-j-post'), bolts: 1 });
}
