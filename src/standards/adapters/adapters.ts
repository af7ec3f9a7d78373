import type { AdapterRow } from './adapterRow.ts';
import { brakeAdapters } from './adaptersBrake.ts';
import { driveAdapters } from './adaptersDrive.ts';
import { tubeAdapters } from './adaptersTube.ts';

/** Every adapter, shim, bush and sleeve that can be bought or turned on a small lathe. */
export const adapters: readonly AdapterRow[] = [...tubeAdapters, ...driveAdapters, ...brakeAdapters];
