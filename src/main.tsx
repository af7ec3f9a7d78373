import { render } from 'preact';
import { type LogbookState, openLogbook } from './logbook.ts';
import { App, type Beside, preload } from './screens/App.tsx';
import { Closed } from './screens/Closed.tsx';
import { keepDraftsIn } from './screens/draft.ts';
import { routeOf } from './screens/route.ts';
import { openDrafts } from './store/drafts.ts';

/** The page's only composition root: opens the door, draws the app, and starts what runs beside it. */
async function start(): Promise<void> {
  const place = document.getElementById('app');
  if (!place) throw new Error('the page has no place for the app');
  // What fails to load here is asked for again, and said, by the app itself.
  const screen = preload(routeOf(location.hash)).catch(() => {});
  // Without a place for drafts the forms still work; only a kill would lose what is half typed.
  const drafts = openDrafts().then(keepDraftsIn, () => {});
  // A long opening, such as views folded anew after an update, is said before there is a logbook to draw.
  const opening = (state: LogbookState) => render(<Closed state={state} />, place);
  const logbook = await openLogbook({ loadWriter: () => import('./store/writer.ts'), onState: opening });
  const draw = (beside: Beside) => render(<App logbook={logbook} beside={beside} />, place);
  await Promise.all([screen, drafts]);
  draw({});
  const { runBeside } = await import('./beside.ts');
  runBeside(logbook, draw);
}

void start();
