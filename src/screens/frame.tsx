import { render } from 'preact';
import type { Logbook } from '../logbook.ts';
import { App, type Beside } from './App.tsx';

export { keepDraftsIn } from './draft.ts';

/** Draws the app in its place on the page, and anew whenever what runs beside it has something to say. */
export function draw(place: Element, logbook: Logbook, beside: Beside): void {
  render(<App logbook={logbook} beside={beside} />, place);
}
