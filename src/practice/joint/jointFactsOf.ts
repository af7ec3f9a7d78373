import type { Face } from '../../fit/faces/face.ts';
import { readingOf, traitOf } from '../../fit/faces/reading.ts';
import type { Between, BetweenKind } from '../../journal/entries.ts';
import type { JointRow, PartRow, ToolRow } from '../../journal/rows.ts';
import type { Lubricant } from '../../mechanics/screws/preloadRefusal.ts';
import { convert, type LengthUnit, type Typed, torqueNm } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';
import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { mounts } from '../../standards/interfaces/mounts.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import type { ClampSurface } from '../../standards/screws/friction.ts';
import { sourceText } from '../../words/targetWords.ts';
import type { JointFacts, TargetFacts, ToolFacts } from '../../workings/joint/jointFacts.ts';

/** Joints in which a tube is clamped, and the faces that meet there. */
export const clampFaces: Partial<Record<JointKind, { tube: FaceKind; clamp: FaceKind }>> = {
  'bar-clamp': { tube: 'bar-centre', clamp: 'bar-clamp' },
  'stem-steerer': { tube: 'steerer', clamp: 'steerer-clamp' },
  seatpost: { tube: 'post', clamp: 'seat-tube' },
  'lever-clamp': { tube: 'grip-area', clamp: 'lever-clamp' },
  grip: { tube: 'grip-area', clamp: 'grip-bore' },
};

const mm = (typed: Typed<LengthUnit> | undefined): number | undefined =>
  typed && convert(typed.value, typed.unit, 'mm');

function faceOf(parts: readonly PartRow[], kind: FaceKind): Face | undefined {
  const faces = parts.flatMap((part) => (part.faces ?? []).filter((face) => face.kind === kind));
  return faces.length === 1 ? faces[0] : undefined;
}

function sizeOf(parts: readonly PartRow[], kind: FaceKind, key: string): number | undefined {
  const face = faceOf(parts, kind);
  return face && readingOf(face, key)?.mid;
}

const onThreads: Partial<Record<BetweenKind, Lubricant>> = {
  dry: 'none',
  grease: 'grease',
  'anti-seize': 'anti-seize',
  threadlocker: 'threadlocker-wet',
};

/** What is on the threads: as written with the screws, as logged with the torque, or as lies in a joint without clamp. */
function lubricantOf({ kind, fasteners, applied, between }: JointRow): Lubricant | undefined {
  const written = fasteners.find(({ onThread }) => onThread)?.onThread;
  const logged = applied?.between && onThreads[applied.between];
  // What lies in a clamp lies between tube and bore, and says nothing of its screws; threadlocker never does.
  const lying = between
    .filter((one) => !clampFaces[kind] || one.kind === 'threadlocker')
    .map((one) => onThreads[one.kind])
    .find((lubricant) => lubricant !== undefined);
  return written ?? logged ?? lying;
}

function surfaceOf(joint: JointRow, parts: readonly PartRow[]): ClampSurface | undefined {
  const faces = clampFaces[joint.kind];
  if (!faces) return undefined;
  const has = (kind: BetweenKind) => joint.between.some((one) => one.kind === kind);
  const tube = faceOf(parts, faces.tube);
  if (tube && traitOf(tube, 'material') === 'carbon')
    return has('assembly-paste') ? 'carbon-paste' : 'carbon-dry';
  return has('grease') || has('anti-seize') ? 'metal-greased' : 'metal-dry';
}

function targetOf(joint: JointRow, parts: readonly PartRow[]): TargetFacts | undefined {
  const ruling = rulingTarget(joint.targets);
  if (!ruling.ok) return undefined;
  const { target, overruled, standing } = ruling;
  const inNm = ({ value, unit }: typeof target.torque) => torqueNm(value, unit);
  const whose = parts.find(({ partId }) => partId === target.partId)?.name;
  const loNm = inNm(target.torque);
  return {
    loNm,
    hiNm: Math.max(loNm, target.upTo ? inNm(target.upTo) : loNm),
    source: sourceText(target, whose),
    byMaker: standing === 'part-maker',
    othersNm: overruled.map(({ torque }) => inNm(torque)),
  };
}

/** A tool as the computations want it. */
export function toolFacts(tool: ToolRow): ToolFacts {
  const { name, toolClass, minNm, maxNm, tolerancePercent, lastCheckMs, checkEveryDays } = tool;
  const since = (atMs: number | null | undefined) =>
    atMs !== undefined && atMs !== null && atMs > (lastCheckMs ?? 0);
  return {
    ...{ name, toolClass, minNm, maxNm, tolerancePercent, lastCheckMs, checkEveryDays },
    cyclesSinceCheck: tool.cyclesSinceCheck,
    dropped: since(tool.droppedAtMs),
    foundOut: since(tool.foundOut?.atMs),
    leverMm: mm(tool.lever),
  };
}

/** The rotor and the bare mount this joint belongs to, from the faces of the bike's parts of its end. */
function discOf(joint: JointRow, parts: readonly PartRow[], bikeParts: readonly PartRow[]) {
  if (joint.kind !== 'rotor' && joint.kind !== 'caliper' && joint.kind !== 'brake-mount') return {};
  const rotorMm =
    sizeOf(parts, 'rotor-size', 'diameterMm') ??
    sizeOf(parts, 'caliper-mount', 'rotorMm') ??
    sizeOf(bikeParts, 'rotor-size', 'diameterMm');
  const mount = faceOf(parts, 'disc-mount') ?? faceOf(bikeParts, 'disc-mount');
  const row = mounts.find(({ id }) => id === mount?.standard);
  const holder = bikeParts.find((part) => part.faces?.some((face) => face === mount));
  const printed = mount && readingOf(mount, 'nativeRotorMm')?.mid;
  const native = printed ?? row?.nativeRotorMm[holder?.kind === 'fork' ? 'front' : 'rear'] ?? undefined;
  return { rotorMm, nativeRotorMm: native };
}

const pieces: readonly BetweenKind[] = ['adapter', 'shim', 'spacer', 'washer'];
const soft: readonly BetweenKind[] = ['assembly-paste', 'retaining-compound'];
const is = (of: Between[], kinds: readonly BetweenKind[]) =>
  of.filter(({ kind }) => kinds.includes(kind)).length;

/**
 * A joint as written down, in the shape the computations ask for. What was not recorded is left out.
 * @param parts the parts that meet in it and lie between
 * @param bikeParts all parts of its bike
 * @param tool the tool in the hand, or the one it was tightened with
 */
export function jointFactsOf(
  joint: JointRow,
  parts: readonly PartRow[],
  bikeParts: readonly PartRow[],
  tool: ToolRow | undefined,
  nowMs: number,
): JointFacts {
  const { kind, fasteners, applied, clamp, bar, extension, locked, found, between } = joint;
  const faces = clampFaces[kind];
  const meeting = parts.filter(({ partId }) => joint.partIds.includes(partId));
  const temperature = locked?.temperature;
  return {
    kind,
    screws: fasteners.map(({ thread, count, screw, propertyClass, female, grip, variant }) => ({
      ...{ thread, count, screw, propertyClass, female, variant },
      gripMm: mm(grip),
    })),
    changed: meeting.filter(({ changes }) => changes.length > 0).map(({ name }) => name),
    target: targetOf(joint, parts),
    appliedNm: applied && torqueNm(applied.applied.value, applied.applied.unit),
    onThread: lubricantOf(joint),
    clampFace: surfaceOf(joint, meeting),
    clamp: clamp && {
      construction: clamp.construction,
      tubeArmMm: mm(clamp.tubeArm),
      boltArmMm: mm(clamp.boltArm),
      shim: clamp.shim,
    },
    tubeMm: faces && sizeOf(meeting, faces.tube, 'diameterMm'),
    boreMm: faces && sizeOf(meeting, faces.clamp, 'boreMm'),
    bar: bar && { riseMm: mm(bar.rise) ?? 0, reachMm: mm(bar.reach) ?? 0 },
    piecesBetween: is(between, pieces),
    softLayer: is(between, soft) > 0,
    tool: tool && toolFacts(tool),
    extension: extension && { lengthMm: mm(extension.length) ?? 0, angleDeg: extension.angleDeg },
    locker: locked && {
      ...{ grade: locked.grade, surface: locked.surface, primer: locked.primer },
      temperatureC: temperature && convert(temperature.value, temperature.unit, 'Cel'),
    },
    lockerMeant: is(between, ['threadlocker']) > 0,
    found: found && {
      ...{ way: found.way, outcome: found.outcome },
      movedAtNm: found.movedAt && torqueNm(found.movedAt.value, found.movedAt.unit),
    },
    ...discOf(joint, parts, bikeParts),
    nowMs,
  };
}
