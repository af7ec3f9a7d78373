import { rideCheck } from '../standards/checks/rideCheck.ts';
import type { DemoPen } from './demo.ts';
import { bar, celsius, checkAll, id, mL, nm } from './demoWords.ts';

export const BIKE = 'ferry';
export const here = { on: 'bike' as const, bikeId: id(BIKE) };

export const toolFor = (torqueNm: number) => (torqueNm <= 10 ? 'tool-small' : 'tool-large');

/** A tyre seated, filled with sealant, watched and judged. */
export async function seal(
  pen: DemoPen,
  end: 'front' | 'rear',
  amountMl: number,
  days: number,
): Promise<void> {
  const jointId = id(`f-j-bead-${end}`);
  const step = (await pen.read('bench', { bikeId: id(BIKE) }))?.steps.find(
    (one) => one.jointId === jointId && one.kind === 'seat' && one.state === 'open',
  );
  await pen.write({
    type: 'mark-seal',
    jointId,
    ...(step ? { stepId: step.stepId } : {}),
    mark: {
      mark: 'seated',
      dry: true,
      beadLine: 'even',
      reading: { pressure: bar(2.5), temperature: celsius(18) },
    },
  });
  const sealantKind = 'latex, water-borne';
  await pen.write({
    type: 'mark-seal',
    jointId,
    mark: { mark: 'sealant', sealantKind, amount: mL(amountMl) },
  });
  await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'spun-and-shaken' } });
  await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'laid-left' } });
  await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'laid-right' } });
  await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'soaped', bubbles: 'none' } });
  const read = (value: number, temperature: number) => ({
    type: 'mark-seal' as const,
    jointId,
    mark: { mark: 'reading' as const, reading: { pressure: bar(value), temperature: celsius(temperature) } },
  });
  pen.at(days, 260);
  await pen.write(read(2.5, 18));
  pen.at(days - 1, 30);
  await pen.write(read(2.45, 16));
  await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'holds' } });
}

/** Answers what is due on the day the pen stands at: held, unless `moved` says otherwise. */
export async function answerDue(
  pen: DemoPen,
  moved: Record<string, { at: number; to: number }>,
): Promise<void> {
  const untilMs = pen.atMs();
  const rechecks = await pen.read('rechecks', { bikeId: id(BIKE) });
  for (const recheck of rechecks) {
    if (recheck.dueAtMs === undefined || recheck.dueAtMs > untilMs) continue;
    const found = moved[recheck.jointId?.slice('demo-'.length) ?? ''];
    const { recheckId, jointId } = recheck;
    if (recheck.kind === 'look-at-mark' && jointId) {
      await pen.write({ type: 'find-torque', jointId, recheckId, outcome: 'held', way: 'mark' });
    } else if (recheck.kind === 'retorque' && jointId) {
      await pen.write(
        found
          ? {
              type: 'find-torque',
              jointId,
              recheckId,
              outcome: 'moved',
              way: 'tightening',
              movedAt: nm(found.at),
              broughtTo: nm(found.to),
              toolId: id(toolFor(found.to)),
            }
          : { type: 'find-torque', jointId, recheckId, outcome: 'held', way: 'tightening' },
      );
    } else {
      await pen.write({ type: 'answer-recheck', recheckId, outcome: 'as-it-should' });
    }
  }
}

/** The check before riding, gone through whole, and the release. */
export async function release(pen: DemoPen, statement: 'first-ride' | 'ride', covers: string): Promise<void> {
  await checkAll(pen, BIKE, rideCheck);
  await pen.write({ type: 'release-bike', bikeId: id(BIKE), statement, covers, by: 'Demo builder' });
}
