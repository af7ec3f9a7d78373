import type { WheelReadings } from '../journal/aboutWheels.ts';
import type { WheelRow } from '../journal/rows.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import { type LengthUnit, type Typed, unitsOf } from '../mechanics/units.ts';
import type { ReadPitch } from '../mechanics/wheels/spokeByEar.ts';
import { readTension } from '../mechanics/wheels/spokeTensionRead.ts';
import { quantityRefusals } from '../words/quantityRefusals.ts';
import { pitchRefusals, UNMEASURED_SENTENCE } from '../words/wheel/earWords.ts';
import { gaugeRefusals } from '../words/wheel/wheelWords.ts';

/** What is read at each spoke on a walk round the wheel. */
export type Walk = 'tension' | 'sideways' | 'outward';

/** A set of readings as it is being typed; '' is not read. */
export interface WheelReadingDraft {
  moment: WheelReadings['moment'];
  tyre: WheelReadings['tyre'];
  readIn: WheelReadings['readIn'];
  /** by place of the spoke, spoke 1 first */
  tension: string[];
  sideways: string[];
  outward: string[];
  lateral: string;
  radial: string;
  dish: string;
  note: string;
}

const SEVERAL_SPOKES = 72;
const none = (): string[] => Array.from({ length: SEVERAL_SPOKES }, () => '');

/** The form before anything is read. @param readIn as the last set was read */
export const emptyReading = (
  moment: WheelReadings['moment'],
  readIn: WheelReadings['readIn'],
): WheelReadingDraft => ({
  ...{ moment, tyre: 'off', readIn, tension: none(), sideways: none(), outward: none() },
  ...{ lateral: '', radial: '', dish: '', note: '' },
});

export type ReadReadings =
  | { ok: true; readings: WheelReadings; empty: boolean }
  | { ok: false; wrong: Record<string, string> };

/** No spoke sounds above it. */
const HIGHEST_HZ = 20_000;

/** A pitch that was typed or heard. */
function typedPitch(hz: number, byPitch: ((hz: number) => ReadPitch) | undefined) {
  if (!byPitch) return { ok: false, sentence: UNMEASURED_SENTENCE } as const;
  if (hz < 1) return { ok: false, sentence: pitchRefusals['too-low-for-spoke'] } as const;
  const answer = byPitch(Math.min(hz, HIGHEST_HZ));
  return answer.ok
    ? ({ ok: true, read: hz, tensionN: answer.tensionN } as const)
    : ({ ok: false, sentence: pitchRefusals[answer.reason] } as const);
}

/**
 * The tension of one spoke as it was typed.
 * @returns undefined for an empty field, or a sentence
 * @example typedTension('100', 'kgf', undefined) //=> { ok: true, read: 100, tensionN: 980.665 }
 */
export function typedTension(
  text: string,
  readIn: WheelReadings['readIn'],
  gauge: WheelRow['gauge'],
  byPitch?: (hz: number) => ReadPitch,
): { ok: true; read: number; tensionN: number } | { ok: false; sentence: string } | undefined {
  if (text.trim() === '') return undefined;
  const number = parseNumber(text);
  if (!number.ok) return { ok: false, sentence: quantityRefusals[number.reason] };
  if (readIn === 'Hz') return typedPitch(number.value, byPitch);
  const answer = readTension(number.value, readIn, gauge);
  return answer.ok
    ? { ok: true, read: number.value, tensionN: answer.tensionN }
    : { ok: false, sentence: gaugeRefusals[answer.reason] };
}

/**
 * What was read, as the logbook takes it.
 * @param spokes how many the wheel has
 * @param gauge its table
 * @returns the set, or a sentence for each field that cannot be taken: `tension.3`, `lateral`
 * @example readReadings({ ...emptyReading('before', 'N'), lateral: '0,3' }, 36, undefined).ok //=> true
 */
export function readReadings(
  draft: WheelReadingDraft,
  spokes: number,
  gauge: WheelRow['gauge'],
  byPitch?: (hz: number, place: number) => ReadPitch,
): ReadReadings {
  const wrong: Record<string, string> = {};
  const length = (field: 'lateral' | 'radial' | 'dish'): Typed<LengthUnit> | undefined => {
    if (draft[field].trim() === '') return undefined;
    const read = parseTyped(draft[field], unitsOf.length, 'mm', field === 'dish' ? 'allow' : 'refuse');
    if (read.ok) return read.quantity;
    wrong[field] = quantityRefusals[read.reason];
    return undefined;
  };
  const run = (walk: 'sideways' | 'outward'): (number | null)[] =>
    draft[walk].slice(0, spokes).map((text, at) => {
      if (text.trim() === '') return null;
      const read = parseNumber(text, 'allow');
      if (read.ok) return read.value;
      wrong[`${walk}.${at}`] = quantityRefusals[read.reason];
      return null;
    });
  const tensions = draft.tension.slice(0, spokes).map((text, at) => {
    const answer = typedTension(text, draft.readIn, gauge, byPitch && ((hz) => byPitch(hz, at)));
    if (answer?.ok === false) wrong[`tension.${at}`] = answer.sentence;
    return answer?.ok ? answer : null;
  });
  const [sidewaysMm, outwardMm] = [run('sideways'), run('outward')];
  const measured = { lateral: length('lateral'), radial: length('radial'), dish: length('dish') };
  if (Object.keys(wrong).length > 0) return { ok: false, wrong };
  const readAny = (list: readonly unknown[]) => list.some((one) => one !== null);
  const readings: WheelReadings = {
    ...{ moment: draft.moment, tyre: draft.tyre, readIn: draft.readIn },
    read: tensions.map((one) => one?.read ?? null),
    tensionsN: tensions.map((one) => one?.tensionN ?? null),
    ...(measured.lateral ? { lateral: measured.lateral } : {}),
    ...(measured.radial ? { radial: measured.radial } : {}),
    ...(measured.dish ? { dish: measured.dish } : {}),
    ...(readAny(sidewaysMm) ? { sidewaysMm } : {}),
    ...(readAny(outwardMm) ? { outwardMm } : {}),
    ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
  };
  const empty =
    ![tensions, sidewaysMm, outwardMm].some(readAny) && Object.values(measured).every((one) => !one);
  return { ok: true, readings, empty };
}
