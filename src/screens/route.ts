/** Where in the app a person is; the address holds it, so that back, reload and a notification lead to the same place. */
export type Route =
  | { at: 'home' }
  | { at: 'new-bike' }
  | { at: 'bike'; bikeId: string; open?: string }
  | { at: 'bench'; bikeId: string }
  | { at: 'plan'; bikeId: string }
  | { at: 'fit'; bikeId: string; findingId?: string }
  | { at: 'shelf' }
  | { at: 'new-part'; place: string }
  | { at: 'part'; partId: string }
  /** With a face it was asked for, and goes back to who asked. */
  | { at: 'edit-part'; partId: string; faceId?: string }
  | { at: 'change-part'; partId: string; stepId?: string }
  | { at: 'new-wheel'; place: string }
  | { at: 'wheel'; wheelId: string }
  | { at: 'edit-wheel'; wheelId: string }
  | { at: 'lace-wheel'; wheelId: string }
  | { at: 'read-wheel'; wheelId: string }
  | { at: 'new-joint'; bikeId: string }
  | { at: 'joint'; jointId: string }
  | { at: 'edit-joint'; jointId: string }
  | { at: 'seal'; jointId: string; open?: string }
  | { at: 'release'; bikeId: string }
  | { at: 'ride'; bikeId: string }
  /** A line for one bike, or for one that is chosen there. */
  | { at: 'log'; bikeId?: string; kind?: string }
  | { at: 'rechecks'; bikeId: string; open?: string }
  | { at: 'history'; place: string }
  | { at: 'sheet'; bikeId: string }
  | { at: 'workings'; jointId: string }
  | { at: 'tools' }
  | { at: 'settings' }
  | { at: 'check' };

const NAMED: Partial<Record<Route['at'], string>> = {
  bike: 'bikeId',
  bench: 'bikeId',
  plan: 'bikeId',
  fit: 'bikeId',
  'new-part': 'place',
  part: 'partId',
  'edit-part': 'partId',
  'change-part': 'partId',
  'new-wheel': 'place',
  wheel: 'wheelId',
  'edit-wheel': 'wheelId',
  'lace-wheel': 'wheelId',
  'read-wheel': 'wheelId',
  'new-joint': 'bikeId',
  joint: 'jointId',
  'edit-joint': 'jointId',
  seal: 'jointId',
  release: 'bikeId',
  ride: 'bikeId',
  log: 'bikeId',
  rechecks: 'bikeId',
  history: 'place',
  sheet: 'bikeId',
  workings: 'jointId',
};
/** What may stand behind that: where on the screen to begin. Elsewhere it is `open`: what a notice asked for. */
const WITHIN: Partial<Record<Route['at'], string>> = {
  fit: 'findingId',
  'edit-part': 'faceId',
  'change-part': 'stepId',
  log: 'kind',
};
const PLAIN = new Set(['home', 'new-bike', 'shelf', 'tools', 'settings', 'check', 'log']);

/** What stands behind a percent sign and is no letter is taken as it is written: nothing has such a name. */
function decoded(id: string): string {
  try {
    return decodeURIComponent(id);
  } catch {
    return id;
  }
}

/**
 * The route an address names; an address that names none leads home.
 * @example routeOf('#/bike/b1') //=> { at: 'bike', bikeId: 'b1' }
 */
export function routeOf(hash: string): Route {
  const [at = '', id = '', inner = ''] = hash.replace(/^#\/?/, '').split('/');
  if (PLAIN.has(at) && (at !== 'log' || id === '')) return { at } as Route;
  // Asked for by its own name: every object also answers to `constructor` and the like.
  const field = Object.hasOwn(NAMED, at) ? NAMED[at as Route['at']] : undefined;
  const within = inner === '' ? undefined : (WITHIN[at as Route['at']] ?? 'open');
  if (field && id !== '')
    return { at, [field]: decoded(id), ...(within ? { [within]: decoded(inner) } : {}) } as unknown as Route;
  return { at: 'home' };
}

/**
 * The address of a route.
 * @example hrefOf({ at: 'bike', bikeId: 'b1' }) //=> '#/bike/b1'
 */
export function hrefOf(route: Route): string {
  const field = NAMED[route.at];
  const names = route as unknown as Record<string, string | undefined>;
  const ids = [field, WITHIN[route.at] ?? 'open'].flatMap((name) => (name && names[name]) ?? []);
  return ['#', route.at, ...ids.map(encodeURIComponent)].join('/');
}

/** Goes there. `replace` leaves no step to come back to, as after saving a form. */
export function go(route: Route, replace = false): void {
  if (replace) location.replace(hrefOf(route));
  else location.hash = hrefOf(route).slice(1);
}
