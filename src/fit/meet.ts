import type { FaceKind } from '../standards/faceKinds.ts';
import type { Face } from './face.ts';
import type { Rule } from './rule.ts';
import { brakeRules } from './rules/brakeRules.ts';
import { clampRules } from './rules/clampRules.ts';
import { driveRules } from './rules/driveRules.ts';
import { headsetRules } from './rules/headsetRules.ts';
import { namedRules } from './rules/namedRules.ts';
import { seatRules } from './rules/seatRules.ts';
import { shellRules } from './rules/shellRules.ts';
import { slotRules } from './rules/slotRules.ts';
import { spacingRules } from './rules/spacingRules.ts';
import { wheelRules } from './rules/wheelRules.ts';
import type { Meeting } from './verdict.ts';

/** Every joint the program can judge. A new one is a row in one of these files. */
export const rules: readonly Rule[] = [
  ...headsetRules,
  ...clampRules,
  ...seatRules,
  ...shellRules,
  ...driveRules,
  ...namedRules,
  ...spacingRules,
  ...slotRules,
  ...wheelRules,
  ...brakeRules,
];

const byKinds = new Map<string, Rule>(rules.map((rule) => [`${rule.first} ${rule.second}`, rule]));

/** The rule for two kinds in either order, and whether the order given is the rule's own. */
export function ruleFor(one: FaceKind, other: FaceKind): { rule: Rule; inOrder: boolean } | undefined {
  const straight = byKinds.get(`${one} ${other}`);
  if (straight) return { rule: straight, inOrder: true };
  const turned = byKinds.get(`${other} ${one}`);
  return turned && { rule: turned, inOrder: false };
}

/**
 * What two faces do with nothing between them, in either order.
 * @returns undefined when such faces never meet, or have nothing to say to each other
 * @example meet(clampFace, barFace)?.meets //=> 'yes'
 */
export function meet(one: Face, other: Face): Meeting | undefined {
  const found = ruleFor(one.kind, other.kind);
  if (!found) return undefined;
  const { rule, inOrder } = found;
  const judgement = inOrder ? rule.judge(one, other) : rule.judge(other, one);
  if (!judgement) return undefined;
  return {
    oneWay: [],
    asks: [],
    notes: [],
    risk: rule.risk,
    source: rule.source,
    known: rule.known,
    ...judgement,
  };
}
