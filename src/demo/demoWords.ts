import type { Command } from '../journal/commands.ts';
import { DEMO } from '../journal/demoIds.ts';
import type { Between, Target } from '../journal/entries.ts';
import { bareNumber } from '../mechanics/numberText.ts';
import type { TorqueUnit, Typed } from '../mechanics/units.ts';

export const id = (name: string): string => `${DEMO}${name}`;
/** What an id of the demo was made from. */
export const demoKeyOf = (demoId: string): string => demoId.slice(DEMO.length);
export const typedNm = (value: number): Typed<TorqueUnit> => ({
  value,
  unit: 'N.m',
  typed: bareNumber(value, 6),
});
export const typedBar = (value: number) => ({ value, unit: 'bar' as const, typed: bareNumber(value, 6) });
export const typedCelsius = (value: number) => ({ value, unit: 'Cel' as const, typed: bareNumber(value, 6) });
export const typedMl = (value: number) => ({ value, unit: 'mL' as const, typed: bareNumber(value, 6) });
export const typedMm = (value: number) => ({ value, unit: 'mm' as const, typed: bareNumber(value, 6) });

export const printedTarget = (partName: string, torqueNm: number, upToNm?: number): Target => ({
  source: 'printed-on-the-part',
  torque: typedNm(torqueNm),
  ...(upToNm === undefined ? {} : { upTo: typedNm(upToNm) }),
  partId: id(partName),
});
export const table = (torqueNm: number, reference: string): Target => ({
  source: 'general-table',
  torque: typedNm(torqueNm),
  reference,
});
export const judgedTarget = (torqueNm: number): Target => ({
  source: 'own-judgement',
  torque: typedNm(torqueNm),
});
export const grease: Between[] = [{ kind: 'grease' }];
export const dry: Between[] = [{ kind: 'dry' }];

export type JointCommand = Extract<Command, { type: 'make-joint' }>;

/** A joint in one line: kind, name, parts, screws, targets, what goes between. */
export function joint(
  bike: string,
  key: string,
  kind: JointCommand['kind'],
  name: string,
  parts: string[],
  screws: [string, number, ('right' | 'left')?] | null,
  targets: Target[],
  between: Between[] = grease,
): JointCommand {
  return {
    type: 'make-joint',
    jointId: id(key),
    bikeId: id(bike),
    kind,
    name,
    partIds: parts.map(id),
    between,
    fasteners: screws ? [{ thread: screws[0], count: screws[1], hand: screws[2] ?? 'right' }] : [],
    targets,
  };
}
