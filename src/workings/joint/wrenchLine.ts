import { wrenchWorking } from '../../mechanics/screws/torqueWorkings.ts';
import { type ToolDoubt, toolAtSetting, toolCheckState } from '../../mechanics/screws/wrenchFitness.ts';
import { given, type Working } from '../../mechanics/working.ts';
import type { JointFacts, ToolFacts } from './jointFacts.ts';
import { missing, type Saying, type WorkingLine, withoutDocument } from './line.ts';
import { waitsFor } from './preload.ts';
import { changedText } from './targetLine.ts';
import { classOf, scaleOf } from './toolError.ts';

const doubts: Record<ToolDoubt, string> = {
  'above-full-scale': 'More than its scale: take another tool.',
  'below-its-scale': 'Less than its scale begins with: take another tool.',
  'below-a-fifth-of-full-scale': 'Under a fifth of its full scale nothing is promised: take a smaller tool.',
};
const YEARLY = { months: 12, cycles: 5000 };
const onItsScale = { tone: 'good', word: 'On its scale, check current' } as const;
const DAYS_IN_MONTH = 30.4375;

/** What is to be minded about a tool, apart from its scale. */
function checkWarnings(tool: ToolFacts, nowMs: number, say: Saying): string[] {
  if (tool.toolClass === 'by-hand') return ['By hand: a third off either way is usual.'];
  const { lastCheckMs, checkEveryDays, cyclesSinceCheck = 0 } = tool;
  const interval = classOf(tool)?.check ?? YEARLY;
  const months = checkEveryDays && checkEveryDays > 0 ? checkEveryDays / DAYS_IN_MONTH : interval.months;
  const state = toolCheckState(lastCheckMs, cyclesSinceCheck, nowMs, { ...interval, months });
  const checked = lastCheckMs === undefined ? '' : ` It was last checked ${say.day(lastCheckMs)}.`;
  const words = {
    current: [],
    'due-soon': [`Its check is due soon.${checked}`],
    overdue: [`Its check is overdue.${checked}`],
    'never-checked': ['It was never checked.'],
  }[state];
  return [
    ...(tool.foundOut ? ['It was found out of calibration since its last check: take another tool.'] : []),
    ...(tool.dropped ? ['It was dropped since its last check.'] : []),
    ...words,
  ];
}

/** What to set on the tool in the hand so that the screw gets the target, and what to mind about that tool. */
export function wrenchLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  const { target, tool, extension, nowMs } = facts;
  const line = { id: 'wrench', label: 'Wrench setting' };
  const changed = changedText(facts);
  if (!target) return undefined;
  if (changed) return { ...line, text: changed };
  if (!tool) return { ...line, text: waitsFor([missing('tool')]), missing: [missing('tool')] };
  const { leverMm } = tool;
  if (extension && leverMm === undefined)
    return { ...line, text: waitsFor([missing('lever')]), missing: [missing('lever')] };
  const behindHand =
    extension &&
    leverMm !== undefined &&
    leverMm + extension.lengthMm * Math.cos((extension.angleDeg * Math.PI) / 180) < leverMm * 0.05;
  if (behindHand) return { ...line, text: 'Not computed: this extension reaches back to the hand.' };

  const plain: Working = {
    result: target.loNm,
    unit: 'N·m',
    formula: 'S = T',
    inputs: [given('T', target.loNm, 'N·m')],
    source: 'nothing between the square and the screw that reaches sideways',
    known: 'exact',
  };
  const through = (nm: number): Working =>
    extension && leverMm !== undefined
      ? wrenchWorking(nm, {
          wrenchMm: leverMm,
          extensionMm: extension.lengthMm,
          angleDeg: extension.angleDeg,
        })
      : { ...plain, result: nm };
  const working = through(target.loNm);
  const loNm = working.result as number;
  const hiNm = through(target.hiNm).result as number;
  const onScale = scaleOf(tool);
  const tolerance = classOf(tool)?.tolerance ?? { upTo10Nm: 0.06, above10Nm: 0.06, usableFrom: 0.2 };
  const fits = onScale ? [loNm, hiNm].map((nm) => toolAtSetting({ ...onScale, tolerance }, nm)) : [];
  const printed = tool.tolerancePercent !== undefined || (classOf(tool)?.origins ?? 0) > 0;
  const scale = new Set(fits.flatMap((fit) => (fit.ok ? [] : [doubts[fit.reason]])));
  const checks = checkWarnings(tool, nowMs, say);
  const way = extension ? `, with ${say.number(extension.lengthMm, 0)} mm between` : '';
  const unranged = !onScale && tool.toolClass !== 'by-hand';
  return {
    ...line,
    text: `${say.torque(loNm, hiNm)} on ${tool.name}${way}`,
    verdict:
      scale.size > 0 || tool.foundOut
        ? { tone: 'stop', word: 'Wrong tool for it' }
        : checks.length > 0
          ? { tone: 'care', word: 'Check the tool' }
          : printed
            ? onItsScale
            : withoutDocument(onItsScale),
    ...(scale.size + checks.length > 0 ? { warnings: [...scale, ...checks] } : {}),
    working,
    ...(unranged ? { missing: [missing('tool-range')] } : {}),
  };
}
