/** Seeds that once found something: they are thrown again for ever, with the length of their sequence. */
export const keptSeeds: readonly { seed: number; length: number; what: string }[] = [
  { seed: 698, length: 40, what: 'a part of the person on a bike of the demo while that was removed' },
];
