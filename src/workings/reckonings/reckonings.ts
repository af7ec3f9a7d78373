import { brakeReckonings } from './brakes.ts';
import { clampReckonings } from './clamps.ts';
import { driveReckonings } from './drive.ts';
import { fitReckonings } from './fits.ts';
import { recheckReckonings } from './rechecks.ts';
import type { Reckoning } from './reckoning.ts';
import { screwReckonings } from './screws.ts';
import { tyreReckonings } from './tyres.ts';
import { wheelSizeReckonings } from './wheelSizes.ts';
import { wheelReckonings } from './wheels.ts';

/** Every computation that can be done on its own, in the order of the list. */
export const reckonings: readonly Reckoning[] = [
  ...screwReckonings,
  ...clampReckonings,
  ...fitReckonings,
  ...recheckReckonings,
  ...brakeReckonings,
  ...tyreReckonings,
  ...wheelReckonings,
  ...wheelSizeReckonings,
  ...driveReckonings,
];
