/** The writing half of the store, loaded as one piece when the first command is given. */
export { beginAnew } from './anew.ts';
export { append } from './append.ts';
export { checkStore } from './check.ts';
export * as copies from './copies.ts';
export { asBuilt, duties, releaseNow } from './deepViews.ts';
export { removeDemo } from './demo.ts';
export { rebuildIfOld, sortAnew } from './rebuild.ts';
