import type { BridgePlan } from '../fit/bridges/acceptBridge.ts';
import { CALIPER_UNCERTAINTY_MM } from '../fit/faces/face.ts';
import type { Finding } from '../fit/finding.ts';
import { topicName } from '../fit/openFindings.ts';
import type { DemoPen } from './demo.ts';
import { bar, buildAll, celsius, id, mL, mm } from './demoWords.ts';
import { magpieBridges } from './magpieBridges.ts';
import { magpieJoints } from './magpieJoints.ts';
import { magpieParts, type PartLine } from './magpieParts.ts';

const BIKE = 'magpie';

const torques: Record<string, number> = { 'm-j-stem': 5, 'm-j-bb': 38, 'm-j-mount': 7 };

const COLD_SET_STEP = id('m-step-cold-set');

/** What a finding asked for, written down: the piece with a step to get it, or the change as a step. */
async function accept(
  pen: DemoPen,
  finding: Finding,
  plan: BridgePlan,
  part: PartLine | null,
): Promise<void> {
  const bikeId = id(BIKE);
  const about = topicName(finding.topic);
  if (part) {
    const { key, ...rest } = part;
    await pen.write({ type: 'add-part', partId: id(key), place: { on: 'bike', bikeId }, ...rest });
    await pen.write({
      ...{ type: 'add-step', bikeId, kind: 'check', title: `Get or make: ${part.name}` },
      ...{ detail: part.note ?? '', partId: id(key), afterStepId: null },
    });
  }
  for (const { partId, caution } of plan.oneWayChanges)
    await pen.write({
      ...{ type: 'add-step', bikeId, stepId: COLD_SET_STEP, kind: 'cut', title: 'Bend the ends cold: frame' },
      ...{ detail: caution, partId, afterStepId: null },
    });
  const change = plan.oneWayChanges[0];
  const way = part?.name ?? `${change?.before} to ${change?.after} mm by cold-setting`;
  await pen.write({
    ...{ type: 'accept-finding', bikeId, findingId: finding.findingId },
    words: `${about}: ${way}`,
  });
}

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
  const taken = magpieBridges();
  pen.at(5, 30);
  for (const { finding, plan, part } of taken) await accept(pen, finding, plan, part);
  pen.at(4, 30);
  const widened = taken.flatMap(({ plan }) => plan.oneWayChanges)[0];
  if (!widened) throw new RangeError('no change of the frame was accepted');
  await pen.write({
    type: 'change-part',
    partId: id('m-frame'),
    cut: 'cold-set',
    where: 'Rear ends, spacing',
    before: mm(widened.before),
    after: mm(widened.after),
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
  await pen.write({ type: 'finish-step', stepId: COLD_SET_STEP });
  // The ends are measured again: what the frame was made for says nothing about it any more.
  await pen.write({
    type: 'describe-part',
    partId: id('m-frame'),
    faces: (magpieParts.find(({ key }) => key === 'm-frame')?.faces ?? []).map((face) =>
      face.faceId === widened.faceId
        ? {
            ...face,
            standard: null,
            measured: { [widened.key]: { ...mm(widened.after), uncertaintyMm: CALIPER_UNCERTAINTY_MM } },
          }
        : face,
    ),
  });
  for (const made of magpieJoints) await pen.write(made);
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
