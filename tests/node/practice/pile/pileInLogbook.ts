import { magpiePile } from '../../../../src/demo/magpiePile.ts';
import type { PilePart } from '../../../../src/fit/pile.ts';
import type { Logbook } from '../../../../src/logbook.ts';
import type { Situation } from '../../../../src/practice/pile/acceptCommands.ts';
import { done } from '../../logbook/openTestLogbook.ts';

export const BIKE = 'bike-1';

/** The demo pile without the front hub whose holes do not suit its rims. */
export const pile: readonly PilePart[] = magpiePile.filter(({ partId }) => partId !== 'front-hub-a');

/** Writes a pile into a logbook as parts of a new bike. */
export async function writePile(logbook: Logbook, parts: readonly PilePart[] = pile): Promise<void> {
  await done(logbook, { type: 'start-bike', bikeId: BIKE, name: 'Magpie' });
  for (const [at, part] of parts.entries()) {
    const { partId, kind, name, faces, position } = part;
    await done(logbook, {
      type: 'add-part',
      ...{ partId, kind, name, faces: [...faces], label: `P-${at + 1}`, origin: 'found' },
      place: { on: 'bike', bikeId: BIKE },
      ...(position ? { position } : {}),
    });
  }
}

/** The bike as the screen sees it. */
export async function situationOf(logbook: Logbook) {
  const card = await logbook.read('bike', { bikeId: BIKE });
  if (!card) throw new Error('the bike is gone');
  const shelf = await logbook.read('parts', { at: 'shelf' });
  const parts = [...card.parts, ...shelf];
  const situation: Situation = {
    bikeId: BIKE,
    parts,
    joints: card.joints,
    steps: card.steps,
    labels: parts.map(({ label }) => label),
    newId: logbook.newId,
  };
  return { card, situation };
}
