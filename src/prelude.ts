import { linker, type Registered } from './linker.ts';
import { scriptNames } from './scriptNames.ts';

/**
 * Stands before the page's first script. The build turns modules into classic scripts, because those the browser
 * compiles while the worker puts them by, and modules it compiles again on every start; here they are put together.
 */
let last: Registered | undefined;

function lastRegistered(): Registered {
  if (!last) throw new Error('a script of the app registered nothing');
  const registered = last;
  last = undefined;
  return registered;
}

const named = scriptNames('pinchbolt-scripts');

const scripts = linker(
  (url) =>
    new Promise((resolve, reject) => {
      const element = document.createElement('script');
      element.src = named(url);
      // The browser tells of a script right after it ran, before it runs another.
      element.onload = () => {
        try {
          resolve(lastRegistered());
        } catch (thrown) {
          element.remove();
          reject(thrown);
        }
      };
      element.onerror = () => {
        element.remove();
        reject(new Error(`${url} could not be loaded`));
      };
      document.head.append(element);
    }),
);

Object.assign(globalThis, {
  System: {
    register(...registered: Registered) {
      last = registered;
    },
  },
});

const first = (document.currentScript as HTMLScriptElement).src;
// The first script registers itself in the very file this stands in, below.
queueMicrotask(() => {
  scripts.take(first, lastRegistered());
  // One that cannot be had is named in the console; the page itself says what to do.
  void scripts.run(first);
});
