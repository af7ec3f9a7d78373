/** How a page is scrolled, and which step of the browser's history it shows. */
export interface ScrolledPage {
  /** Names the step of the history; undefined where the browser does not tell. */
  step(): string | undefined;
  /** How far down it is, and the most it can go now, px. */
  depth(): number;
  most(): number;
  to(depth: number): void;
}

/** What is read from the store makes a list long again; by then it is there. */
const WAIT_MS = 1500;

/**
 * Remembers how far down each step of the history was read, and goes back there.
 * @param page what is scrolled
 * @returns `moved` is called when it was, `arrived` when another step is shown; `settle` goes on towards the place as long as
 *   the page is too short for it, and says whether it is there
 */
export function placeKeeper(page: ScrolledPage) {
  const depths = new Map<string, number>();
  let wanted = 0;
  // The browser is at the next step a little before its page is shown, and still tells how the last one scrolled.
  let shown = page.step();
  return {
    moved(): void {
      // On the way back the page is shorter than it was: what it shows then is not where one was.
      if (shown !== undefined && wanted === 0) depths.set(shown, page.depth());
    },
    arrived(): void {
      shown = page.step();
      wanted = depths.get(shown ?? '') ?? 0;
    },
    settle(): boolean {
      if (wanted === 0) return true;
      page.to(Math.min(wanted, page.most()));
      if (page.most() < wanted) return false;
      wanted = 0;
      return true;
    },
    /** A hand scrolls, or it takes too long: the page stays where it is. */
    giveUp(): void {
      wanted = 0;
    },
  };
}

interface SteppedHistory {
  currentEntry?: { id: string; index: number } | null;
  entries(): { url: string | null }[];
}

/** The arrow of a card goes back in the history where that is the card it leads to: else one could not return to the place. */
function backByHistory(navigation: SteppedHistory, event: MouseEvent): void {
  const arrow =
    event.target instanceof Element && event.target.closest<HTMLAnchorElement>('a[aria-label="Back"]');
  const before = navigation.entries()[(navigation.currentEntry?.index ?? 0) - 1];
  if (!arrow || event.button !== 0 || event.ctrlKey || event.metaKey || before?.url !== arrow.href) return;
  event.preventDefault();
  history.back();
}

/** Going back shows a list where it was left. Where the browser does not tell its steps apart, a list begins at its top. */
export function keepPlaces(): void {
  const { navigation } = globalThis as { navigation?: SteppedHistory };
  if (!navigation) return;
  const keeper = placeKeeper({
    // Not its key: what replaces a form keeps the key of the form.
    step: () => navigation.currentEntry?.id,
    depth: () => scrollY,
    most: () => document.documentElement.scrollHeight - innerHeight,
    to: (depth) => scrollTo(0, depth),
  });
  addEventListener('scroll', keeper.moved, { passive: true });
  for (const byHand of ['pointerdown', 'wheel', 'keydown'])
    addEventListener(byHand, keeper.giveUp, { passive: true });
  addEventListener('click', (event) => backByHistory(navigation, event));
  addEventListener('hashchange', () => {
    keeper.arrived();
    const until = performance.now() + WAIT_MS;
    const goOn = () => {
      if (keeper.settle()) return;
      if (performance.now() < until) requestAnimationFrame(goOn);
      else keeper.giveUp();
    };
    requestAnimationFrame(goOn);
  });
}
