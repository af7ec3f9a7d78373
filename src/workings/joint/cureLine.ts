import { type CureAdvice, type CureRefusal, cureTime } from '../../mechanics/cures/cure.ts';
import { cureGrid } from '../../standards/screws/cureGrid.ts';
import { lockers } from '../../standards/screws/lockers.ts';
import type { JointFacts } from './jointFacts.ts';
import { bandText, missing, type Saying, type WorkingLine } from './line.ts';

/** Clearance of an ordinary screw in its thread, mm: the gap the curves were drawn for. */
const THREAD_GAP_MM = 0.05;
/** A workshop whose temperature was not measured; our suggestion. */
const ROOM_C = 20;

/** Why no cure can be counted on. */
export const cureRefusals: Record<CureRefusal, string> = {
  'not-reliable-below-5-c': 'Too cold to cure reliably, under 5 °C: warm the joint.',
  'gap-wants-retaining-compound': 'The gap needs a retaining compound.',
  'gap-too-wide-for-grade': 'The gap is too wide for this grade.',
  'never-cures': 'In such a gap it never cures.',
  'attacks-plastic': 'It can crack plastic: do not use it here.',
  'needs-metal': 'It only cures between metals: here it stays liquid.',
};
/** What would help a cure along. */
export const cureAdvices: Record<CureAdvice, string> = {
  'use-primer': 'A slow surface: primer would help.',
  'retaining-compound': 'A wide gap: a retaining compound would do better.',
  'heat-resistant-grade': 'A disc brake runs hot here: use a high-temperature grade.',
  'warm-the-joint': 'Cool: warming the joint speeds it.',
};

/** How long the threadlocker in the joint takes; no line where none is meant. */
export function cureLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  const { locker, lockerMeant, kind } = facts;
  const line = { id: 'cure', label: 'Cure' };
  if (!locker)
    return lockerMeant
      ? {
          ...line,
          text: 'Threadlocker is planned and not applied yet: the bench asks for grade and surface.',
        }
      : undefined;
  const grade = lockers.find((row) => row.grade === locker.grade);
  const surface = Object.keys(cureGrid.surfaces).find((key) => key === locker.surface);
  if (!grade || !surface) return { ...line, text: 'Not computed: this grade or surface is in no table.' };
  const temperatureC = locker.temperatureC ?? ROOM_C;
  const cure = cureTime(cureGrid, {
    grade,
    surfaces: [surface, surface],
    gapMm: THREAD_GAP_MM,
    temperatureC,
    primer: locker.primer,
    nearDiscBrake: kind === 'rotor' || kind === 'caliper' || kind === 'brake-mount',
  });
  const lacks = locker.temperatureC === undefined ? { missing: [missing('temperature')] } : {};
  if (!cure.ok)
    return {
      ...line,
      text: cureRefusals[cure.reason],
      verdict: { tone: 'stop', word: 'No cure to count on' },
      ...lacks,
    };
  const taken = locker.temperatureC === undefined ? `, ${ROOM_C} °C taken` : '';
  const full = cure.fullHours
    ? `full after ${bandText(cure.fullHours, say, 0)} h`
    : 'never full without primer';
  return {
    ...line,
    text: `Wait ${say.number(cure.waitHours, 0)} h; by the curves ${bandText(cure.rideHours, say, 0)} h to a ride, ${full}${taken}`,
    ...(cure.advice.length > 0 ? { warnings: cure.advice.map((each) => cureAdvices[each]) } : {}),
    working: cure.working,
    ...lacks,
  };
}
