import { OpenChecks } from './demoChecks.ts';
import type { DemoPen } from './demoPen.ts';
import { buildAll, planned } from './demoPlan.ts';
import { id, joint, printedTarget, typedBar, typedCelsius, typedMl, typedNm } from './demoWords.ts';
import { FERRY, here, release, seal } from './ferryActs.ts';
import { ferryJoints, ferryParts, ferryTorques } from './ferryParts.ts';

const secondRotor = joint(
  FERRY,
  'f-j-rotor-2',
  'rotor',
  'Second rotor on front hub',
  ['f-rotor-2', 'f-hub-front'],
  ['M5', 6],
  [printedTarget('f-rotor-2', 4)],
  [{ kind: 'threadlocker' }],
);

/** Seven months of one bike: built, fallen with, refreshed, re-torqued, and robbed of its saddle for another. */
export function writeFerry(pen: DemoPen): void {
  const bikeId = id(FERRY);
  pen.at(215, 0);
  const tool = { checkBasis: 'bench-check' as const, checkEveryDays: 365, tolerancePercent: 6 };
  const checked = pen.nowMs - 240 * 86_400_000;
  pen.write({
    type: 'add-tool',
    toolId: id('tool-small'),
    name: 'Small click wrench',
    minNm: 2,
    maxNm: 14,
    lastCheckMs: checked,
    ...tool,
  });
  pen.write({
    type: 'add-tool',
    toolId: id('tool-large'),
    name: 'Large click wrench',
    minNm: 10,
    maxNm: 60,
    lastCheckMs: checked,
    ...tool,
    tolerancePercent: 4,
  });
  pen.write({
    type: 'start-bike',
    bikeId,
    name: 'Ferry',
    about: '20-inch folding tug for the shopping and the train',
    demo: true,
  });
  for (const [key, label, name, kind, more] of ferryParts) {
    pen.write({
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
  for (const made of ferryJoints) pen.write(made);
  const parts = ferryParts.map(([key, , name, kind, more]) => ({ partId: id(key), name, kind, ...more }));
  const steps = planned(pen, ferryJoints, parts);
  pen.at(215, 90);
  buildAll(pen, steps, ferryTorques);
  pen.at(215, 200);
  seal(pen, 'front', 60, 215);
  pen.at(214, 40);
  seal(pen, 'rear', 60, 214);
  pen.at(213, 60);
  pen.write({ type: 'end-wait', waitId: id('cure-f-j-rotor'), outcome: 'looked' });
  pen.at(213, 90);
  release(pen, 'first-ride', 'The whole build; first ride short and near home');
  const checks = new OpenChecks();
  pen.at(213, 160);
  pen.write({
    type: 'log-ride',
    bikeId,
    km: 9,
    minutes: 38,
    noticed: 'rear wheel creaked once when pulling away',
    recheckIds: checks.set(ferryJoints),
  });
  pen.at(213, 240);
  checks.answerAll(pen, { 'f-j-axle-rear': { at: 22, to: 30 } });
  pen.at(212, 10);
  release(pen, 'ride', 'After the re-checks of the first ride');
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
    pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.7) });
  }
  pen.at(150, 30);
  pen.write({
    type: 'find-defect',
    defectId: id('fall'),
    bikeId,
    jointId: id('f-j-bar'),
    words: 'Fell on wet tram rails at walking pace: bar turned in the riser, left grip torn',
    area: 'steering',
    decision: 'do-not-ride',
  });
  for (const key of ['f-bar', 'f-stem', 'f-fork', 'f-cranks']) {
    pen.write({
      type: 'add-note',
      partId: id(key),
      bikeId,
      words: 'Was on the bike in the fall on the tram rails',
    });
  }
  pen.at(149, 60);
  pen.write({ type: 'hand-tighten', jointId: id('f-j-bar'), bolts: 4 });
  pen.write({
    type: 'apply-torque',
    jointId: id('f-j-bar'),
    applied: typedNm(5),
    entered: 'tap',
    bolts: 4,
    passes: 3,
    toolId: id('tool-small'),
    marked: true,
  });
  pen.write({
    type: 'close-defect',
    defectId: id('fall'),
    how: 'Bar, riser, fork and crank cleaned and looked at under raking light by the shop in the next street; bar straight, clamp re-torqued',
  });
  release(pen, 'ride', 'Steering after the fall');
  const refresh = (days: number, amountMl: number) => {
    for (const end of ['front', 'rear']) {
      pen.at(days, end === 'front' ? 20 : 40);
      const jointId = id(`f-j-bead-${end}`);
      pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'sealant', sealantKind: 'latex, water-borne', amount: typedMl(amountMl) },
      });
      pen.write({ type: 'mark-seal', jointId, mark: { mark: 'spun-and-shaken' } });
      pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'pumped', reading: { pressure: typedBar(2.5), temperature: typedCelsius(20) } },
      });
      pen.at(days - 1, 20);
      pen.write({
        type: 'mark-seal',
        jointId,
        mark: { mark: 'reading', reading: { pressure: typedBar(2.45), temperature: typedCelsius(19) } },
      });
      pen.write({ type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'holds' } });
    }
  };
  refresh(120, 30);
  pen.at(118, 60);
  release(pen, 'ride', 'Tyres after fresh sealant');
  for (const [days, km] of [
    [117, 19],
    [110, 8],
  ] as const) {
    pen.at(days, 100);
    pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.8) });
  }
  pen.at(100, 0);
  pen.write({
    type: 'move-part',
    partId: id('f-rotor'),
    to: { on: 'scrapped', how: 'sawn through' },
    why: 'down to 1.5 mm',
  });
  checks.forget('f-j-rotor');
  pen.write({
    type: 'add-part',
    partId: id('f-rotor-2'),
    place: here,
    label: 'F-020',
    name: 'Rotor 160, second',
    kind: 'rotor',
    origin: 'bought-new',
    kmBefore: 0,
  });
  pen.write(secondRotor);
  pen.write({
    type: 'apply-locker',
    jointId: id('f-j-rotor-2'),
    waitId: id('cure-f-j-rotor-2'),
    grade: 'high-temperature',
    surface: 'steel',
    primer: false,
    waitMs: 24 * 3_600_000,
  });
  pen.write({
    type: 'apply-torque',
    jointId: id('f-j-rotor-2'),
    applied: typedNm(4),
    entered: 'tap',
    bolts: 6,
    passes: 2,
    toolId: id('tool-small'),
    marked: true,
  });
  pen.at(98, 0);
  pen.write({ type: 'end-wait', waitId: id('cure-f-j-rotor-2'), outcome: 'looked' });
  release(pen, 'first-ride', 'New front rotor; short rides until it is bedded in');
  for (const [days, km] of [
    [95, 7],
    [88, 21],
    [74, 17],
  ] as const) {
    pen.at(days, 100);
    // The first ride on the new rotor sets its re-checks.
    const fresh = days === 95 ? { recheckIds: checks.set([secondRotor]) } : {};
    pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.6), ...fresh });
  }
  pen.at(60, 30);
  checks.answerAll(pen, { 'f-j-pinch': { at: 9.5, to: 13 } });
  refresh(40, 30);
  pen.at(38, 60);
  release(pen, 'ride', 'Pinch bolts brought to torque, tyres refreshed');
  for (const [days, km] of [
    [33, 24],
    [20, 15],
  ] as const) {
    pen.at(days, 100);
    pen.write({ type: 'log-ride', bikeId, km, minutes: Math.round(km * 3.7) });
  }
}
