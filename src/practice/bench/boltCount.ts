/** Bolts of one joint counted off, pass by pass. */
export interface BoltCount {
  /** Which time round, from 1. */
  pass: number;
  /** Bolts tight in this pass. */
  tight: number;
}

export const uncounted: BoltCount = { pass: 1, tight: 0 };

/**
 * One more bolt tight. With all of them tight nothing more is counted: the next pass is begun on purpose.
 * @param of bolts of the joint, ≥ 1
 * @example boltTight({ pass: 1, tight: 3 }, 4) //=> { pass: 1, tight: 4 }
 */
export function boltTight({ pass, tight }: BoltCount, of: number): BoltCount {
  return { pass, tight: Math.min(of, tight + 1) };
}

/**
 * One bolt back; before the first bolt of a later pass, back to the full pass before it.
 * @param of bolts of the joint, ≥ 1
 * @example boltBack({ pass: 2, tight: 0 }, 4) //=> { pass: 1, tight: 4 }
 */
export function boltBack({ pass, tight }: BoltCount, of: number): BoltCount {
  if (tight > 0) return { pass, tight: tight - 1 };
  return pass > 1 ? { pass: pass - 1, tight: of } : { pass, tight };
}

/** Once more round. @example nextPass({ pass: 1, tight: 4 }) //=> { pass: 2, tight: 0 } */
export function nextPass({ pass }: BoltCount): BoltCount {
  return { pass: pass + 1, tight: 0 };
}

/** Whether anything has been counted. @example anyCounted({ pass: 1, tight: 0 }) //=> false */
export function anyCounted({ pass, tight }: BoltCount): boolean {
  return pass > 1 || tight > 0;
}
