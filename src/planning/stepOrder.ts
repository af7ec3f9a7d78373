/** What the order of work needs to know of a joint. */
export interface JointToBuild {
  jointId: string;
  name: string;
  /** Place in a build; lower comes first. */
  order: number;
  /** How the faces come together: pushed or screwed, pressed, or a tyre seated on a rim. */
  way: 'fit' | 'press' | 'seat';
  partNames: string[];
  /** What goes between, in words: shim, adapter, grease. */
  between: string[];
  locker: boolean;
  /** A retaining compound goes on before the faces come together. */
  bonded?: boolean;
  torqued: boolean;
}

/** A step without its place and its id. */
export interface PlannedStep {
  kind: 'fit' | 'torque' | 'press' | 'lock' | 'seat';
  title: string;
  detail?: string;
  jointId: string;
}

function together(joint: JointToBuild): string | undefined {
  const parts = joint.partNames.filter((name) => name !== '').join(' + ');
  const between = joint.between.length > 0 ? `between: ${joint.between.join(', ')}` : '';
  const detail = [parts, between].filter((text) => text !== '').join('; ');
  return detail === '' ? undefined : detail;
}

/**
 * The joints of a bike as steps: bearings and wheels before what hangs on them, and within a joint first
 * together, then threadlocker, then torque, since a locker goes on the thread before it is tightened.
 * @param joints joints to build, in any order
 * @returns steps in the order of work; joints of equal order keep the order they came in
 * @example stepsFor([]) //=> []
 */
export function stepsFor(joints: JointToBuild[]): PlannedStep[] {
  const ordered = joints.map((joint, index) => ({ joint, index }));
  ordered.sort((a, b) => a.joint.order - b.joint.order || a.index - b.index);
  return ordered.flatMap(({ joint }) => {
    const { jointId, name, way } = joint;
    const detail = together(joint);
    const steps: PlannedStep[] = joint.bonded ? [{ kind: 'lock', title: name, jointId }] : [];
    steps.push({ kind: way, title: name, jointId, ...(detail ? { detail } : {}) });
    if (joint.locker && !joint.bonded) steps.push({ kind: 'lock', title: name, jointId });
    if (joint.torqued) steps.push({ kind: 'torque', title: name, jointId });
    return steps;
  });
}
