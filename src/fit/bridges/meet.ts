import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { Face } from '../faces/face.ts';
import { brakeRules } from '../rules/brakeRules.ts';
import { clampRules } from '../rules/clampRules.ts';
import { driveRules } from '../rules/driveRules.ts';
import { headsetRules } from '../rules/headsetRules.ts';
import { namedRules } from '../rules/namedRules.ts';
import { seatRules } from '../rules/seatRules.ts';
import { shellRules } from '../rules/shellRules.ts';
import { slotRules } from '../rules/slotRules.ts';
import { spacingRules } from '../rules/spacingRules.ts';
import { wheelRules } from '../rules/wheelRules.ts';
import type { Meeting } from '../verdict.ts';
import type { Rule } from './rule.ts';

/** Every joint the program can judge. A new one is a row in one of these files. */
export const fitRules: readonly Rule[] = [
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

interface RuleFound {
  rule: Rule;
  /** Whether the kinds were asked for in the rule's own order. */
  inOrder: boolean;
}

const byKinds = new Map<FaceKind, Map<FaceKind, RuleFound>>();
const note = (one: FaceKind, other: FaceKind, found: RuleFound): void => {
  byKinds.set(one, (byKinds.get(one) ?? new Map<FaceKind, RuleFound>()).set(other, found));
};
// A rule of one kind with itself would be found in its own order.
for (const rule of fitRules) note(rule.second, rule.first, { rule, inOrder: false });
for (const rule of fitRules) note(rule.first, rule.second, { rule, inOrder: true });

/** The rule for two kinds in either order, and whether the order given is the rule's own. */
export const ruleFor = (one: FaceKind, other: FaceKind): RuleFound | undefined =>
  byKinds.get(one)?.get(other);

/** The kinds a face of this kind is ever judged against. @example partnersOf('bar-clamp') //=> ['bar-centre'] */
export const partnersOf = (kind: FaceKind): FaceKind[] => [...(byKinds.get(kind)?.keys() ?? [])];

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
