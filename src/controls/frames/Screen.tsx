import '../look.css';
import './Screen.css';
import { type ComponentChildren, createContext } from 'preact';
import { useContext, useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { Icon } from '../Icon.tsx';

export interface ScreenProps {
  /** Heading of the card and title of the page. */
  title: string;
  /** Identity of the route; when it changes, the heading takes the focus so that it is read out. */
  route?: string;
  /** What "back" does; without it there is no back arrow. A string is a link. */
  back?: string | (() => void);
  /** At the right of the heading: one small button at most. */
  action?: ComponentChildren;
  /** What waits, always in sight beside the heading. */
  waits?: ComponentChildren;
  /** Buttons across the lower third; lying down they stand at the right. */
  actions?: ComponentChildren;
  /** The bar that takes the last entry back, where the screen has one of its own. */
  undo?: ComponentChildren;
  /** Language of the page, as a BCP 47 tag. */
  lang?: string;
  children: ComponentChildren;
}

/** The bar that takes the last entry back, given once for all screens; it stands above their buttons. */
export const UndoPlace = createContext<ComponentChildren>(undefined);

/** Leaves as much room at the edges of the page as head and foot take where they stay in sight. */
function keepClear(frame: HTMLElement | null, foot: HTMLElement | null): void {
  const head = frame?.querySelector('.screen-head');
  const stuck = (one?: Element | null) => !!one && getComputedStyle(one).position === 'sticky';
  const across = !!foot && !!frame && foot.offsetWidth > frame.offsetWidth / 2;
  const { style } = document.documentElement;
  style.setProperty('--head-room', `${stuck(head) ? (head as HTMLElement).offsetHeight : 0}px`);
  style.setProperty('--foot-room', `${stuck(foot) && across ? foot.offsetHeight : 0}px`);
}

const focusFirst = (foot: HTMLElement | null) =>
  foot?.querySelector<HTMLElement>('a[href], button:not(:disabled)')?.focus();

/** The frame of every screen: a punched job card with its heading, what waits, the matter, and what to do. */
export function Screen({
  title,
  route = title,
  back,
  action,
  waits,
  actions,
  undo: ownUndo,
  lang = 'en',
  children,
}: ScreenProps) {
  const sharedUndo = useContext(UndoPlace);
  const undo = ownUndo ?? sharedUndo;
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    document.title = `${title} · Pinchbolt`;
    document.documentElement.lang = lang;
  }, [title, lang]);
  useEffect(() => {
    // After the paint: asked earlier, the browser would have to lay the page out twice.
    heading.current?.focus({ preventScroll: true });
  }, [route]);

  const shownRoute = useRef(route);
  useLayoutEffect(() => {
    // Another step of the same screen begins at its top.
    if (shownRoute.current !== route) scrollTo(0, 0);
    shownRoute.current = route;
  }, [route]);

  const frame = useRef<HTMLDivElement>(null);
  const foot = useRef<HTMLElement>(null);
  const hasFoot = Boolean(actions || undo);
  useEffect(() => {
    // What has the focus is never under head or foot, however many buttons stand there.
    const clear = () => keepClear(frame.current, foot.current);
    const seen = new ResizeObserver(clear);
    for (const one of [frame.current, foot.current]) if (one) seen.observe(one);
    // A window that grows taller alone may let the head stick again.
    addEventListener('resize', clear);
    return () => {
      seen.disconnect();
      removeEventListener('resize', clear);
    };
  }, [hasFoot]);

  const arrow = <Icon name="back" sizePx={28} />;
  return (
    <div class={hasFoot ? 'screen screen-acts' : 'screen'} ref={frame}>
      <header class="screen-head">
        {hasFoot && (
          <button type="button" class="screen-skip" onClick={() => focusFirst(foot.current)}>
            To the buttons
          </button>
        )}
        {typeof back === 'string' && (
          <a class="screen-back" href={back} aria-label="Back">
            {arrow}
          </a>
        )}
        {typeof back === 'function' && (
          <button type="button" class="screen-back" onClick={back} aria-label="Back">
            {arrow}
          </button>
        )}
        <h1 class="screen-title" ref={heading} tabIndex={-1}>
          {title}
        </h1>
        {waits && (
          <section class="screen-waits" aria-label="Timers">
            {waits}
          </section>
        )}
        {action}
      </header>
      <main class="screen-main">{children}</main>
      {hasFoot && (
        <footer class="screen-foot" ref={foot}>
          {undo}
          {actions}
        </footer>
      )}
    </div>
  );
}
