import { render } from 'preact';
import { openLogbook } from './logbook.ts';
import { App, type AppProps } from './screens/App.tsx';

/** The page's only composition root: opens the door, draws the app, and starts what runs beside it. */
async function start(): Promise<void> {
  const place = document.getElementById('app');
  if (!place) throw new Error('the page has no place for the app');
  const logbook = await openLogbook({ loadWriter: () => import('./store/writer.ts') });
  let update: AppProps['update'];
  const draw = () => render(<App logbook={logbook} update={update} />, place);
  draw();
  const { runBeside } = await import('./screens/beside.ts');
  runBeside(logbook, (next) => {
    update = next;
    draw();
  });
}

void start();
