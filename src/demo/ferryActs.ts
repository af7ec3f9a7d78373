import { rideCheck } from '../standards/checks/rideCheck.ts';
import type { DemoPen } from './demoPen.ts';
import { stepIdOf } from './demoPlan.ts';
import { id, typedBar, typedCelsius, typedMl } from './demoWords.ts';

export const FERRY = 'ferry';
export const here = { on: 'bike' as const, bikeId: id(FERRY) };

/** A tyre seated, filled with sealant, watched and judged. */
export function seal(pen: DemoPen, end: 'front' | 'rear', amountMl: number, days: number): void {
  const jointId = id(`f-j-bead-${end}`);
  pen.write({
    type: 'mark-seal',
    jointId,
    stepId: stepIdOf(`f-j-bead-${end}`, 'seat'),
    mark: {
      mark: 'seated',
      dry: true,
      beadLine: 'even',
      reading: { pressure: typedBar(2.5), temperature: typedCelsius(18) },
    },
  });
  const sealantKind = 'latex, water-borne';
  pen.write({
    type: 'mark-seal',
    jointId,
    mark: { mark: 'sealant', sealantKind, amount: typedMl(amountMl) },
  });
  pen.write({ type: 'mark-seal', jointId, mark: { mark: 'spun-and-shaken' } });
  pen.write({ type: 'mark-seal', jointId, mark: { mark: 'laid-left' } });
  pen.write({ type: 'mark-seal', jointId, mark: { mark: 'laid-right' } });
  pen.write({ type: 'mark-seal', jointId, mark: { mark: 'soaped', bubbles: 'none' } });
  const read = (value: number, temperature: number) => ({
    type: 'mark-seal' as const,
    jointId,
    mark: {
      mark: 'reading' as const,
      reading: { pressure: typedBar(value), temperature: typedCelsius(temperature) },
    },
  });
  pen.at(days, 260);
  pen.write(read(2.5, 18));
  pen.at(days - 1, 30);
  pen.write(read(2.45, 16));
  pen.write({ type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'holds' } });
}

/** The check before riding, gone through whole, and the release. */
export function release(pen: DemoPen, statement: 'first-ride' | 'ride', covers: string): void {
  for (const group of rideCheck) {
    const items = group.items.map((item) => ({ itemId: item.id, ok: true }));
    pen.write({ type: 'confirm-ride-check', bikeId: id(FERRY), groupId: group.id, items });
  }
  pen.write({ type: 'release-bike', bikeId: id(FERRY), statement, covers, by: 'Demo builder' });
}
