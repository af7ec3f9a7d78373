import { render } from 'preact';
import { logbookFor } from './logbook.ts';
import { App, type Beside, preload } from './screens/App.tsx';
import { routeOf } from './screens/route.ts';

/** The page's only composition root: opens the door, draws the app, and starts what runs beside it. */
async function start(): Promise<void> {
  const place = document.getElementById('app');
  if (!place) throw new Error('the page has no place for the app');
  // The store opens while the screen is fetched and drawn; what the screen reads waits for it.
  const logbook = logbookFor({ loadWriter: () => import('./store/writer.ts') });
  // What fails to load here is asked for again, and said, by the app itself.
  await preload(routeOf(location.hash)).catch(() => {});
  const draw = (beside: Beside) => render(<App logbook={logbook} beside={beside} />, place);
  draw({});
  await logbook.opened;
  const { runBeside } = await import('./beside.ts');
  runBeside(logbook, draw);
}

void start();
