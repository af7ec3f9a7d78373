/**
 * Whether a wait of this kind is done once its time is over; a seal, and what a person called something else, need a look
 * then. Common practice, no source.
 * @param kind of the wait
 * @example curesByClock('cure') //=> true
 */
export const curesByClock = (kind: string): boolean => kind === 'cure' || kind === 'adhesive';
