import { expect, test } from 'vitest';

const never = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1];

/**
 * One test per named figure: NaN, the infinities, a negative and (unless zero is meaningful there) zero are refused
 * with a RangeError that says its name.
 * @param call runs the function with the one figure replaced
 */
export function refusesBadNumbers(
  named: Readonly<Record<string, 'positive' | 'or-zero'>>,
  call: (name: string, value: number) => unknown,
): void {
  test.each(Object.entries(named))('%s must be a sound number (%s)', (name, kind) => {
    for (const value of kind === 'positive' ? [...never, 0] : never)
      expect(() => call(name, value), `${name} = ${value}`).toThrow(RangeError);
    expect(() => call(name, Number.NaN)).toThrow(name);
  });
}
