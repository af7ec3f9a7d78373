/**
 * Why something failed, in the words of what was thrown.
 * @example reasonOf(new Error('no room')) //=> 'no room'
 */
export const reasonOf = (thrown: unknown): string => String((thrown as Error)?.message ?? thrown);
