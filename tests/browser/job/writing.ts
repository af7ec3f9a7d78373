import { describe, expect, test } from 'vitest';
import { firstVisit } from '../product.ts';
import { goTo, hold, inView, planLines, press, unfold } from './hands.ts';
import { entries, rows } from './rawStore.ts';
import { bikeId, buildOn, joint, leaveTheNetwork, origin, page, part, phone, steps } from './story.ts';
import * as wagtail from './wagtail.ts';

/** The bike, its parts, the cut that stays, and its joints. */
export function writtenDown(): void {
  describe('a bike is written down', () => {
    test('one visit, one name; from here on there is no network and no server', async () => {
      await firstVisit(phone, origin());
      await press(page, 'New bike');
      await page.getByLabel('Name').fill('Wagtail');
      await page.getByLabel('Notes').fill('A town bike from three crates');
      await press(page, 'Add bike');
      await page.getByRole('heading', { level: 1, name: 'Wagtail' }).waitFor();
      await buildOn('Wagtail');
      await leaveTheNetwork();
    });

    test('parts, one with a serial and what is not known, one from the shelf: [P1] each is in one place', async () => {
      await press(page, 'Add a part');
      await page.getByRole('heading', { level: 1, name: 'A part for Wagtail' }).waitFor();
      const { frame, fork, stem, shim, bar, hub, rotor, rim, tyre, cranks, pedals, post, saddle } = wagtail;
      for (const one of [frame, fork, stem, shim, bar, hub, rotor, rim, tyre, cranks, pedals])
        await wagtail.typePart(page, one, 'next');
      await wagtail.typePart(page, post, 'open');
      await goTo(page, '#/shelf');
      await press(page, 'Add a part');
      await page.getByRole('heading', { level: 1, name: 'A part for the shelf' }).waitFor();
      await wagtail.typePart(page, saddle, 'open');
      expect((await part(saddle.name)).place).toEqual({ on: 'shelf' });

      await goTo(page, `#/bike/${bikeId}`);
      await unfold(page, 'Parts');
      await press(page, 'From the shelf');
      await page.getByRole('dialog').getByRole('button', { name: saddle.name }).click();
      await expect.poll(async () => (await part(saddle.name)).place).toEqual({ on: 'bike', bikeId });
      await page.getByRole('dialog').getByText('Nothing on the shelf').waitFor();

      const row = await part(fork.name);
      expect(row).toMatchObject({ serial: fork.serial, unknown: fork.unknown });
      const steerer = row.faces?.find(({ kind }) => kind === 'steerer');
      expect(steerer?.measured['diameterMm']).toMatchObject({ value: 25.4, unit: 'mm', typed: '25,4' });
      expect((await rows(page, 'part')).every(({ place }) => place.on === 'bike')).toBe(true);
    });

    test('[P3] the bar is sawn: signed by holding, not by a tap, with what is left and a look that recurs', async () => {
      const { partId } = await part(wagtail.bar.name);
      await goTo(page, `#/part/${partId}`);
      await press(page, 'Cut or bend');
      await page.getByRole('radio', { name: 'Sawn' }).check();
      await page.getByLabel('Where', { exact: true }).fill('Both ends');
      await page.getByLabel('Before', { exact: true }).fill('720');
      await page.getByLabel('After', { exact: true }).fill('640,5');
      await page.getByLabel('What is left', { exact: true }).fill('640,5');
      await page.getByLabel('How', { exact: true }).fill('Tube cutter, ends dressed with a file');
      await page.getByLabel('Why', { exact: true }).fill('Too wide for the gate');
      await page.getByLabel('What to look for').fill('Cracks from the cut edge');
      await page.getByRole('button', { name: /^Save the change/ }).click();
      await page.waitForTimeout(300);
      expect(await entries(page, 'part-changed'), 'a tap signs nothing').toEqual([]);
      await hold(page, /^Save the change/);
      await page.getByRole('heading', { level: 1, name: wagtail.bar.name, exact: true }).waitFor();
      await page.getByText('From 720 mm to 640,5 mm').waitFor();
      const [change] = await entries(page, 'part-changed');
      expect(change).toMatchObject({ partId, bikeId, after: { value: 640.5, unit: 'mm', typed: '640,5' } });
      const [look] = await entries(page, 'recheck-set');
      expect(look).toMatchObject({ partId, kind: 'inspect', dueRides: 1, dueKm: 500, dueDays: 90 });
    });

    test('joints: a shim between, a range, threadlocker, a left-hand pedal, axle nuts, a bead, one without a source', async () => {
      const { steererJoint, barJoint, rotorJoint, pedalJoint, axleJoint, beadJoint, railsJoint } = wagtail;
      for (const one of [steererJoint, barJoint, rotorJoint, pedalJoint, axleJoint, beadJoint, railsJoint])
        await wagtail.typeJoint(page, bikeId, one);
      expect(await rows(page, 'joint')).toHaveLength(7);
      const { partId } = await part(wagtail.shim.name);
      expect((await joint('Stem on steerer')).between).toEqual([{ kind: 'shim', partId }]);
      expect((await joint('Bar in stem')).targets[0]).toMatchObject({
        torque: { typed: '5' },
        upTo: { typed: '6' },
      });
      // Workshop thread list and an axle-and-pedal thread page: the left pedal's thread is left-handed.
      expect((await joint('Pedals')).fasteners.map(({ hand }) => hand)).toEqual(['right', 'left']);
      expect((await joint('Saddle rails')).targets).toEqual([{ source: 'none' }]);
      await page.getByText('No target torque').waitFor();
    });
  });
}

/** Joints become steps, and the steps are put in the order of this afternoon. */
export function planned(): void {
  describe('the plan', () => {
    test('comes from the joints; one step is split, one skipped with its reason, one moved', async () => {
      await goTo(page, `#/bike/${bikeId}`);
      await press(page, 'Make the plan');
      await press(page, 'From the joints');
      await page.getByText(/14 not done/).waitFor();

      await press(page, 'Add a step');
      await page.getByLabel('Title').fill('Bell on bar');
      await page.getByRole('radio', { name: 'Fit', exact: true }).check();
      await page.getByRole('dialog').getByRole('button', { name: 'Add it' }).click();
      await page.getByText(/15 not done/).waitFor();

      const change = async (title: RegExp) => {
        const pencil = page.getByRole('button', { name: title });
        await (await inView(page, pencil)).click();
      };
      await change(/^Change step \d+: Bell on bar/);
      await press(page, 'Skip');
      await press(page, 'Part not here yet');
      await page.getByText(/1 skipped/).waitFor();

      const pedals = (await steps()).findIndex(
        ({ title, kind }) => title === 'Pedals: fit' && kind === 'fit',
      );
      await change(new RegExp(`^Change step ${pedals + 1}: Pedals`));
      await press(page, 'Split');
      await page.getByLabel('Step 1', { exact: true }).fill('Right pedal, clockwise');
      await page.getByLabel('Step 2', { exact: true }).fill('Left pedal, anti-clockwise');
      await press(page, 'Make 2 steps');
      await page.getByText(/15 not done/).waitFor();

      // Two taps: picked up, and put down after another.
      await change(/^Move step 1: Front tyre on rim/);
      await page.getByRole('button', { name: /Rotor on hub: fit/ }).click();
      await page.getByText(/15 not done/).waitFor();

      const lines = await planLines(page);
      expect(lines).toHaveLength(16);
      expect(lines[0]).toMatch(/Rotor on hub/);
      expect(lines[1]).toMatch(/Front tyre on rim/);
      expect(lines.join('\n')).toMatch(/Right pedal, clockwise[\s\S]*Left pedal, anti-clockwise/);
      expect(lines.at(-1)).toMatch(/Bell on bar.*Part not here yet.*Skipped/);
      const [dropped] = await entries(page, 'step-dropped');
      expect(dropped?.splitInto).toHaveLength(2);
      expect(await entries(page, 'step-moved')).toHaveLength(1);
    });
  });
}
