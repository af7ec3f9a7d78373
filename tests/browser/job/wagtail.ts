import type { Page } from 'playwright-core';
import { goTo, press, unfold } from './hands.ts';

/** A part as it is typed into its form. */
interface PartTyped {
  name: string;
  kind: string;
  serial?: string;
  unknown?: string;
  /** Sizes by face and caption, as typed. */
  sizes?: { face: string; size: string; typed: string; printed?: true }[];
}

/** A joint as it is typed into its form. */
interface JointTyped {
  kind: string;
  name?: string;
  parts: string[];
  between?: string[];
  /** One row for each kind of screw, in the order of the form. */
  screws?: { thread: string; count?: string }[];
  target?: { source: string; torque?: string; upTo?: string; whose?: string; reference?: string };
}

/** Wagtail, an invented bike: a touring frame, a stem from downhill riding, cranks from the track. No real one. */
export const frame: PartTyped = { name: 'Touring frame', kind: 'Frame' };
export const fork: PartTyped = {
  name: 'Lugged fork',
  kind: 'Fork',
  serial: 'F 0417',
  unknown: 'Nobody knows what hit it before',
  sizes: [{ face: 'Steerer', size: 'Outside diameter', typed: '25,4' }],
};
export const stem: PartTyped = { name: 'Downhill stem', kind: 'Stem' };
export const shim: PartTyped = { name: 'Split shim', kind: 'Shim' };
export const bar: PartTyped = { name: 'Wide bar', kind: 'Bar' };
export const hub: PartTyped = { name: 'Front hub', kind: 'Front hub' };
export const rotor: PartTyped = { name: 'Small rotor', kind: 'Rotor' };
export const rim: PartTyped = { name: 'Front rim', kind: 'Rim' };
export const tyre: PartTyped = {
  name: 'Front tyre',
  kind: 'Tyre',
  sizes: [
    { face: 'Tyre', size: 'Width', typed: '42' },
    { face: 'Tyre', size: 'Maximum pressure, as marked', typed: '3,5', printed: true },
  ],
};
export const cranks: PartTyped = { name: 'Track cranks', kind: 'Cranks' };
export const pedals: PartTyped = { name: 'Flat pedals', kind: 'Pedals' };
export const post: PartTyped = { name: 'Layback post', kind: 'Seatpost' };
export const saddle: PartTyped = { name: 'Sprung saddle', kind: 'Saddle' };

export const steererJoint: JointTyped = {
  kind: 'Stem on steerer',
  parts: [stem.name, fork.name],
  between: [shim.name],
  screws: [{ thread: 'M5', count: '2' }],
  target: { source: 'Printed on the part', torque: '5', whose: stem.name },
};
export const barJoint: JointTyped = {
  kind: 'Bar in stem',
  parts: [bar.name, stem.name],
  screws: [{ thread: 'M5', count: '4' }],
  target: { source: 'Printed on the part', torque: '5', upTo: '6', whose: stem.name },
};
export const rotorJoint: JointTyped = {
  kind: 'Rotor on hub',
  parts: [rotor.name, hub.name],
  between: ['Threadlocker'],
  screws: [{ thread: 'M5', count: '6' }],
  target: { source: "Maker's document", torque: '4', whose: rotor.name, reference: 'Leaflet, page 2' },
};
export const pedalJoint: JointTyped = {
  kind: 'Pedals',
  parts: [pedals.name, cranks.name],
  between: ['Grease'],
  screws: [{ thread: '9/16-20' }, { thread: '9/16-20' }],
  target: { source: 'Printed on the part', torque: '35', whose: cranks.name },
};
export const axleJoint: JointTyped = {
  kind: 'Front axle nuts',
  parts: [hub.name, fork.name],
  screws: [{ thread: 'M9x1', count: '2' }],
  target: { source: "Maker's document", torque: '20', upTo: '25', whose: hub.name, reference: 'Hub card' },
};
export const beadJoint: JointTyped = {
  kind: 'Tyre on rim',
  name: 'Front tyre on rim',
  parts: [tyre.name, rim.name],
};
export const railsJoint: JointTyped = {
  kind: 'Saddle rails',
  parts: [saddle.name, post.name],
  screws: [{ thread: 'M6', count: '2' }],
  target: { source: 'No source found' },
};

/** Writes a part down through its form, and leaves the form open for the next one where `then` says so. */
export async function typePart(page: Page, part: PartTyped, then: 'open' | 'next'): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(part.name);
  await page.getByLabel('Kind', { exact: true }).selectOption({ label: part.kind });
  if (part.serial !== undefined || part.unknown !== undefined) {
    await unfold(page, 'More about it');
    await page.getByLabel('Serial number').fill(part.serial ?? '');
    await page.getByLabel('Unknown history').fill(part.unknown ?? '');
  }
  for (const { face, size, typed, printed } of part.sizes ?? []) {
    const fold = await unfold(page, face);
    await fold.getByLabel(size, { exact: true }).fill(typed);
    if (printed)
      await fold
        .getByRole('checkbox', { name: /^Printed, not measured/ })
        .last()
        .check();
  }
  await press(page, then === 'open' ? 'Add it' : 'Add it, then another', true);
  if (then === 'open') await page.getByRole('heading', { level: 1, name: part.name }).waitFor();
  else await page.getByText(`${part.name} added. The next one:`).waitFor();
}

/** Writes a joint down through its form, and comes to its page. */
export async function typeJoint(page: Page, bikeId: string, joint: JointTyped): Promise<void> {
  await goTo(page, `#/new-joint/${bikeId}`);
  await page.getByLabel('Kind of joint').selectOption({ label: joint.kind });
  if (joint.name !== undefined) await page.getByLabel('Name', { exact: true }).fill(joint.name);
  const others = page.locator('details', {
    has: page.getByRole('heading', { name: 'Other parts of this bike' }),
  });
  if ((await others.count()) > 0) await others.locator('summary').click();
  for (const name of joint.parts) {
    await page
      .getByRole('checkbox', { name: new RegExp(`^${name}`) })
      .first()
      .check();
  }
  for (const name of joint.between ?? []) {
    // A shim stands among the parts as well; what goes between comes after them.
    await page
      .getByRole('checkbox', { name: new RegExp(`^${name}`) })
      .last()
      .check();
  }
  for (const [at, { thread, count }] of (joint.screws ?? []).entries()) {
    await page.getByLabel('Thread', { exact: true }).nth(at).fill(thread);
    if (count !== undefined) await page.getByLabel('How many', { exact: true }).nth(at).fill(count);
  }
  if (joint.target) {
    const { source, torque, upTo, whose, reference } = joint.target;
    await press(page, 'Add a target torque');
    await page.getByLabel('Source').selectOption({ label: source });
    if (torque !== undefined) await page.getByLabel('Torque', { exact: true }).fill(torque);
    if (upTo !== undefined) await page.getByLabel('Upper end, if it is a range').fill(upTo);
    if (whose !== undefined) await page.getByLabel('Part it belongs to').selectOption({ label: whose });
    if (reference !== undefined) await page.getByLabel('Reference').fill(reference);
  }
  await press(page, 'Add the joint');
  await page.getByRole('heading', { level: 1, name: joint.name ?? joint.kind, exact: true }).waitFor();
}
