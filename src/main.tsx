import { render } from 'preact';
import { logbookFor } from './logbook.ts';
import { App, type Beside, preload, readAhead } from './screens/App.tsx';
import { keepDraftsIn } from './screens/draft.ts';
import { routeOf } from './screens/route.ts';
import { openDrafts } from './store/drafts.ts';

/** Reminders, updates and the clock can wait for the first screen to be read. */
const BESIDE_MS = 400;
/** Longer than an open store takes on a slow phone. */
const AHEAD_MS = 1500;

/** The page's only composition root: opens the door, draws the app, and starts what runs beside it. */
async function start(): Promise<void> {
  const place = document.getElementById('app');
  if (!place) throw new Error('the page has no place for the app');
  // The store opens while the screen is fetched and drawn; what the screen reads waits for it.
  const logbook = logbookFor({ loadWriter: () => import('./store/writer.ts') });
  // A form reads its draft as it is drawn. Without a place for drafts only a kill would lose what is half typed.
  const drafts = openDrafts().then(keepDraftsIn, () => {});
  // What fails to load here is asked for again, and said, by the app itself.
  const route = routeOf(location.hash);
  // A store that does not open says why on the screen, so the screen does not wait for it for long.
  const read = Promise.race([readAhead(logbook, route), new Promise((late) => setTimeout(late, AHEAD_MS))]);
  await Promise.all([preload(route).catch(() => {}), drafts, read.catch(() => {})]);
  const draw = (beside: Beside) => render(<App logbook={logbook} beside={beside} />, place);
  draw({});
  await logbook.opened;
  // What runs beside the screen lets the screen go first.
  await new Promise((later) => setTimeout(later, BESIDE_MS));
  const { runBeside } = await import('./beside.ts');
  runBeside(logbook, draw);
}

void start();
