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

  const arrow = <Icon name="back" sizePx={28} />;
  return (
    <div class={actions || undo ? 'screen screen-acts' : 'screen'}>
      <header class="screen-head">
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
      {(actions || undo) && (
        <footer class="screen-foot">
          {undo}
          {actions}
        </footer>
      )}
    </div>
  );
}
