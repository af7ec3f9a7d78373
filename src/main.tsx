import './late.css';
import { render } from 'preact';
import { type Logbook, logbookFor, openDrafts } from './logbook.ts';
import { leftTrace } from './mirror/trace.ts';
import { App, type Beside } from './screens/App.tsx';
import { keepDraftsIn } from './screens/draft.ts';
import { routeOf } from './screens/route.ts';
import type { Safety } from './screens/safety.tsx';
import { loadScreen, readAhead } from './screens/scripts.ts';
import { readPhoneName } from './sensing/thisPhone.ts';
import { zoneNow } from './sensing/zoneNow.ts';

/** Reminders, updates and the clock can wait for the first screen to be read. */
const BESIDE_MS = 400;
/** Longer than an open store takes on a slow phone. */
const AHEAD_MS = 1500;

/** The page's only composition root: opens the door, draws the app, and starts what runs beside it. */
async function start(): Promise<void> {
  const logbook = logbookFor({
    ...{ zone: zoneNow, phone: readPhoneName },
    loadWriter: () => import('./store/writer.ts'),
  });
  const drafts = openDrafts().then(keepDraftsIn, () => {});
  const route = routeOf(location.hash);
  // What fails to load here is asked for again, and said, by the app itself.
  const screen = loadScreen(route.at).catch(() => {});
  // A store that does not open says why on the screen, so the screen does not wait for it for long.
  const late = new Promise((resolve) => setTimeout(resolve, AHEAD_MS));
  const rows = Promise.race([readAhead(logbook, route).catch(() => {}), late]);
  // A form reads its draft as it is drawn. Without a place for drafts only a kill would lose what is half typed.
  const [place] = await Promise.all([placeOfTheApp(), screen, rows, Promise.race([drafts, late])]);
  // Drawn once: were the whole drawn anew, fields that come later would get ids that others have.
  let tell: (beside: Beside) => void = () => {};
  const watchBeside = (listener: typeof tell) => {
    tell = listener;
  };
  const safety = safetyOf(logbook);
  render(<App logbook={logbook} safety={safety} watchBeside={watchBeside} />, place);
  await logbook.opened;
  // What runs beside the screen lets the screen go first.
  await new Promise((later) => setTimeout(later, BESIDE_MS));
  const { runBeside } = await import('./beside.ts');
  runBeside(logbook, safety, (beside) => tell(beside));
}

/** The safeguards are loaded once, with what runs beside the screens or when they are first needed. */
function safetyOf(logbook: Logbook): Safety {
  let loaded: ReturnType<Safety['safeguards']> | undefined;
  const safeguards = () => {
    loaded ??= import('./beside.ts').then(({ safeguardsOf }) => safeguardsOf(logbook));
    loaded.catch(() => {
      loaded = undefined;
    });
    return loaded;
  };
  const heldBefore = async () => ((await leftTrace()) ? (await import('./beside.ts')).heldHere() : undefined);
  return { heldBefore, safeguards };
}

/** The script may run before the page has been read to its end. */
async function placeOfTheApp(): Promise<HTMLElement> {
  if (document.readyState === 'loading')
    await new Promise((read) => document.addEventListener('DOMContentLoaded', read, { once: true }));
  const place = document.getElementById('app');
  if (!place) throw new Error('the page has no place for the app');
  return place;
}

start().catch((thrown) => {
  // The page itself says what to do when nothing was drawn; it need not wait any longer.
  document.documentElement.classList.add('stuck');
  throw thrown;
});
