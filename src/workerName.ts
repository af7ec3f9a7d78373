import { scriptNames } from './scriptNames.ts';

/** Names a script that the page starts as a worker. */
export const workerName = scriptNames('pinchbolt-workers');
