import type { DemoPen } from './demo.ts';
import { bar, buildAll, celsius, id, joint, mL, nm, printed } from './demoWords.ts';
import { answerDue, BIKE, here, release, seal, toolFor } from './ferryActs.ts';
import { ferryJoints, ferryParts, ferryTorques } from './ferryParts.ts';

/** Seven months of one bike: built, fallen with, refreshed, re-torqued, and robbed of its saddle for another. */
export async function ferry(pen: DemoPen): Promise<void> {
  const bikeId = id(BIKE);
  pen.at(215, 0);
  const tool = { checkBasis: 'bench-check' as const, checkEveryDays: 365, tolerancePercent: 6 };
  const checked = pen.nowMs - 240 * 86_400_000;
  await pen.write({
    type: 'add-tool',
    toolId: id('tool-small'),
    name: 'Small click wrench',
    minNm: 2,
    maxNm: 14,
    lastCheckMs: checked,
    ...tool,
  });
  await pen.write({
    type: 'add-tool',
    toolId: id('tool-large'),
    name: 'Large click wrench',
    minNm: 10,
    maxNm: 60,
    lastCheckMs: checked,
    ...tool,
    tolerancePercent: 4,
  });
  await pen.write({
    type: 'start-bike',
    bikeId,
    name: 'Ferry',
    about: '20-inch folding tug for the shopping and the train',
    demo: true,
  });
  for (const [key, label, name, kind, more] of ferryParts) {
    await pen.write({
      type: 'add-part',
      partId: id(key),
      place: here,
      label,
      name,
      kind,
      origin: 'bought-used',
      ...more,
    });
  }
  for (const made of ferryJoints) await pen.write(made);
  await pen.write({ type: 'plan-steps', bikeId });
  pen.at(215, 90);
  await buildAll(pen, BIKE, ferryTorques, { toolFor });
  pen.at(215, 200);
  await seal(pen, 'front', 60, 215);
  pen.at(214, 40);
  await seal(pen, 'rear', 60, 214);
  for (const wait of (await pen.read('bike', { bikeId }))?.waits ?? []) {
    pen.at(213, 60);
    await pen.write({ type: 'end-wait', waitId: wait.waitId, outcome: 'looked' });
  }
  pen.at(213, 90);
  await release(pen, 'first-ride', 'The whole build; first ride short and near home');
  pen.at(213, 160);
  await pen.write({
    type: 'log-ride',
    bikeId,
    km: 9,
    minutes: 38,
    noticed: 'rear wheel creaked once when pulling away',
  });
  pen.at(213, 240);
  await answerDue(pen, { 'f-j-axle-rear': { at: 22, to: 30 } });
  pen.at(212, 10);
  await release(pen, 'ride', 'After the re-checks of the first ride');
  for (const [days, km] of [
    [205, 14],
    [198, 11],
    [190, 22],
    [181, 18],
    [172, 25],
    [163, 12],
    [156, 16],
  ] as const) {
    pen.at(days, 120);
    await pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.7) });
  }
  pen.at(150, 30);
  await pen.write({
    type: 'find-defect',
    bikeId,
    jointId: id('f-j-bar'),
    words: 'Fell on wet tram rails at walking pace: bar turned in the riser, left grip torn',
    area: 'steering',
    decision: 'do-not-ride',
  });
  for (const key of ['f-bar', 'f-stem', 'f-fork', 'f-cranks']) {
    await pen.write({
      type: 'add-note',
      partId: id(key),
      bikeId,
      words: 'Was on the bike in the fall on the tram rails',
    });
  }
  pen.at(149, 60);
  await pen.write({ type: 'hand-tighten', jointId: id('f-j-bar'), bolts: 4 });
  await pen.write({
    type: 'apply-torque',
    jointId: id('f-j-bar'),
    applied: nm(5),
    entered: 'tap',
    bolts: 4,
    passes: 3,
    toolId: id('tool-small'),
    marked: true,
  });
  const [defect] = (await pen.read('bike', { bikeId }))?.defects ?? [];
  if (defect) {
    await pen.write({
      type: 'close-defect',
      defectId: defect.defectId,
      how: 'Bar, riser, fork and crank cleaned and looked at under raking light by the shop in the next street; bar straight, clamp re-torqued',
    });
  }
  await release(pen, 'ride', 'Steering after the fall');
  const refresh = async (days: number, amountMl: number) => {
    for (const end of ['front', 'rear']) {
      pen.at(days, end === 'front' ? 20 : 40);
      const jointId = id(`f-j-bead-${end}`);
      await pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'sealant', sealantKind: 'latex, water-borne', amount: mL(amountMl) },
      });
      await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'spun-and-shaken' } });
      await pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'pumped', reading: { pressure: bar(2.5), temperature: celsius(20) } },
      });
      pen.at(days - 1, 20);
      await pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'reading', reading: { pressure: bar(2.45), temperature: celsius(19) } },
      });
      await pen.write({ type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'holds' } });
    }
  };
  await refresh(120, 30);
  pen.at(118, 60);
  await release(pen, 'ride', 'Tyres after fresh sealant');
  for (const [days, km] of [
    [117, 19],
    [110, 8],
  ] as const) {
    pen.at(days, 100);
    await pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.8) });
  }
  pen.at(100, 0);
  await pen.write({
    type: 'move-part',
    partId: id('f-rotor'),
    to: { on: 'scrapped', how: 'sawn through' },
    why: 'down to 1.5 mm',
  });
  await pen.write({
    type: 'add-part',
    partId: id('f-rotor-2'),
    place: here,
    label: 'F-020',
    name: 'Rotor 160, second',
    kind: 'rotor',
    origin: 'bought-new',
    kmBefore: 0,
  });
  await pen.write(
    joint(
      BIKE,
      'f-j-rotor-2',
      'rotor',
      'Second rotor on front hub',
      ['f-rotor-2', 'f-hub-front'],
      ['M5', 6],
      [printed('f-rotor-2', 4)],
      [{ kind: 'threadlocker' }],
    ),
  );
  await pen.write({
    type: 'apply-locker',
    jointId: id('f-j-rotor-2'),
    grade: 'high-temperature',
    surface: 'steel',
    primer: false,
    waitMs: 24 * 3_600_000,
  });
  await pen.write({
    type: 'apply-torque',
    jointId: id('f-j-rotor-2'),
    applied: nm(4),
    entered: 'tap',
    bolts: 6,
    passes: 2,
    toolId: id('tool-small'),
    marked: true,
  });
  for (const wait of (await pen.read('bike', { bikeId }))?.waits ?? []) {
    pen.at(98, 0);
    await pen.write({ type: 'end-wait', waitId: wait.waitId, outcome: 'looked' });
  }
  await release(pen, 'ride', 'New front rotor');
  for (const [days, km] of [
    [95, 7],
    [88, 21],
    [74, 17],
  ] as const) {
    pen.at(days, 100);
    await pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.6) });
  }
  pen.at(60, 30);
  await answerDue(pen, { 'f-j-pinch': { at: 9.5, to: 13 } });
  await refresh(40, 30);
  pen.at(38, 60);
  await release(pen, 'ride', 'Pinch bolts brought to torque, tyres refreshed');
  for (const [days, km] of [
    [33, 24],
    [20, 15],
  ] as const) {
    pen.at(days, 100);
    await pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.7) });
  }
}
