/** Where the phone sends a file that is shared with the app: `action` of `share_target` in the manifest. */
export const SHARE_PATH = '/share';
/** The field of the form that the file comes in: `params.files` there. */
export const SHARED_FIELD = 'copy';
/** Where the worker keeps it until the page has dealt with it: a part of the cache storage, and its one address. */
export const SHARED = 'pinchbolt-shared';
export const SHARED_FILE = '/:shared';
