import type { BridgePlan } from '../fit/bridges/acceptBridge.ts';
import { CALIPER_UNCERTAINTY_MM } from '../fit/faces/face.ts';
import type { Finding } from '../fit/finding.ts';
import { topicName } from '../fit/openFindings.ts';
import type { DemoPen } from './demoPen.ts';
import { buildAll, type DemoStep, planned, stepIdOf } from './demoPlan.ts';
import { id, typedBar, typedCelsius, typedMl, typedMm } from './demoWords.ts';
import { ferryParts } from './ferryParts.ts';
import { magpieBridges } from './magpieBridges.ts';
import { magpieJoints } from './magpieJoints.ts';
import { type MagpiePart, magpieParts } from './magpieParts.ts';

const MAGPIE = 'magpie';

const torques: Record<string, number> = { 'm-j-stem': 5, 'm-j-bb': 38, 'm-j-mount': 7 };

const COLD_SET_STEP = id('m-step-cold-set');

/** The step of getting or making a piece; what was written last stands first in the list. */
const fetchStep = (partKey: string): DemoStep => ({
  ...{ stepId: stepIdOf(partKey, 'check'), kind: 'check', jointKey: '', bolts: 0 },
});

/** What a finding asked for, written down: the piece with a step to get it, or the change as a step. */
function accept(pen: DemoPen, finding: Finding, plan: BridgePlan, part: MagpiePart | null): void {
  const bikeId = id(MAGPIE);
  const about = topicName(finding.topic);
  if (part) {
    const { key, ...rest } = part;
    pen.write({ type: 'add-part', partId: id(key), place: { on: 'bike', bikeId }, ...rest });
    pen.write({
      ...{ type: 'add-step', bikeId, stepId: fetchStep(key).stepId },
      ...{ kind: 'check', title: `Get or make: ${part.name}` },
      ...{ detail: part.note ?? '', partId: id(key), afterStepId: null },
    });
  }
  for (const { partId, caution } of plan.oneWayChanges)
    pen.write({
      ...{ type: 'add-step', bikeId, stepId: COLD_SET_STEP, kind: 'cut', title: 'Bend the ends cold: frame' },
      ...{ detail: caution, partId, afterStepId: null },
    });
  const change = plan.oneWayChanges[0];
  const way = part?.name ?? `${change?.before} to ${change?.after} mm by cold-setting`;
  pen.write({
    ...{ type: 'accept-finding', bikeId, findingId: finding.findingId },
    words: `${about}: ${way}`,
  });
}

/** The bike on the bench: half built, a tyre settling, threadlocker curing, a saddle and pedals taken off the other. */
export function writeMagpie(pen: DemoPen): void {
  const bikeId = id(MAGPIE);
  pen.at(6, 0);
  pen.write({
    type: 'start-bike',
    bikeId,
    name: 'Magpie',
    about: 'A steel track frame turned into an all-weather town bike out of what was in the boxes',
    demo: true,
  });
  for (const part of magpieParts) {
    const place = part.shelf ? { on: 'shelf' as const, tag: part.shelf } : { on: 'bike' as const, bikeId };
    const { key, shelf: _shelf, ...about } = part;
    pen.write({ type: 'add-part', partId: id(key), place, ...about });
  }
  pen.at(5, 0);
  for (const key of ['f-saddle', 'f-pedals']) {
    pen.write({
      type: 'move-part',
      partId: id(key),
      to: { on: 'bike', bikeId },
      why: 'needed on Magpie',
    });
  }
  const taken = magpieBridges();
  pen.at(5, 30);
  for (const { finding, plan, part } of taken) accept(pen, finding, plan, part);
  pen.at(4, 30);
  const widened = taken.flatMap(({ plan }) => plan.oneWayChanges)[0];
  if (!widened) throw new RangeError('no change of the frame was accepted');
  pen.write({
    type: 'change-part',
    partId: id('m-frame'),
    cut: 'cold-set',
    where: 'Rear dropouts, spacing',
    before: typedMm(widened.before),
    after: typedMm(widened.after),
    leftWords: 'steel stays, no crease seen; dropouts aligned again afterwards',
    how: 'Spread in small steps with a threaded rod, each side measured against a string to the head tube',
    why: 'The rear hub is 130 over the locknuts',
    rulesOut: 'Hubs of 120 without spacers',
    inspection: {
      everyDays: 90,
      everyKm: 500,
      words: 'Look for cracks and lifted paint at bridge and dropouts, in raking light',
    },
  });
  pen.write({ type: 'finish-step', stepId: COLD_SET_STEP });
  // The ends are measured again: what the frame was made for says nothing about it any more.
  pen.write({
    type: 'describe-part',
    partId: id('m-frame'),
    faces: (magpieParts.find(({ key }) => key === 'm-frame')?.faces ?? []).map((face) =>
      face.faceId === widened.faceId
        ? {
            ...face,
            standard: null,
            measured: { [widened.key]: { ...typedMm(widened.after), uncertaintyMm: CALIPER_UNCERTAINTY_MM } },
          }
        : face,
    ),
  });
  for (const made of magpieJoints) pen.write(made);
  const parts = [
    ...ferryParts.map(([key, , name, kind, more]) => ({ partId: id(key), name, kind, ...more })),
    ...[...magpieParts, ...taken.flatMap(({ part }) => part ?? [])].map(({ key, ...part }) => ({
      partId: id(key),
      ...part,
    })),
  ].filter(({ partId }) =>
    magpieJoints.some(
      ({ partIds, between }) => partIds.includes(partId) || between.some((item) => item.partId === partId),
    ),
  );
  const steps = planned(pen, magpieJoints, parts);
  const fetched = taken.flatMap(({ part }) => (part ? [fetchStep(part.key)] : [])).reverse();
  pen.at(1, 60);
  buildAll(pen, [...fetched, ...steps], torques, stepIdOf('m-j-post', 'torque'));
  const rear = { jointId: id('m-j-bead-rear') };
  pen.minutesAgo(95);
  pen.write({
    type: 'mark-seal',
    ...rear,
    stepId: stepIdOf('m-j-bead-rear', 'seat'),
    mark: {
      mark: 'seated',
      dry: true,
      beadLine: 'even',
      reading: { pressure: typedBar(2.5), temperature: typedCelsius(19) },
    },
  });
  pen.write({
    type: 'mark-seal',
    ...rear,
    mark: { mark: 'sealant', sealantKind: 'latex, water-borne', amount: typedMl(65) },
  });
  pen.write({ type: 'mark-seal', ...rear, mark: { mark: 'spun-and-shaken' } });
  pen.write({ type: 'mark-seal', ...rear, mark: { mark: 'laid-left' } });
  pen.minutesAgo(40);
  pen.write({
    type: 'mark-seal',
    ...rear,
    mark: { mark: 'reading', reading: { pressure: typedBar(2.35), temperature: typedCelsius(19) } },
    note: 'bubbles at the valve have stopped',
    lookAgainMs: 60 * 60_000,
  });
  pen.minutesAgo(30);
  pen.write({ type: 'hand-tighten', jointId: id('m-j-post'), bolts: 1 });
}
