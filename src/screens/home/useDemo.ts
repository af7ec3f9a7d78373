import { useState } from 'preact/hooks';
import { useLogbook } from '../door.tsx';

export type DemoState =
  | { is: 'idle' }
  | { is: 'loading' }
  | { is: 'removing' }
  | { is: 'failed'; sentence: string };

export interface Demo {
  state: DemoState;
  load(): Promise<void>;
  remove(): Promise<void>;
}

/** Brings the invented bikes in and takes them out again, and tells how far it has come. */
export function useDemo(): Demo {
  const logbook = useLogbook();
  const [state, setState] = useState<DemoState>({ is: 'idle' });
  const attempt = async (first: DemoState, work: () => Promise<string | undefined>, otherwise: string) => {
    setState(first);
    try {
      const sentence = await work();
      setState(sentence === undefined ? { is: 'idle' } : { is: 'failed', sentence });
    } catch {
      setState({ is: 'failed', sentence: otherwise });
    }
  };
  const load = () =>
    attempt(
      { is: 'loading' },
      async () => {
        const { loadDemo } = await import('../../demo/loadDemo.ts');
        await loadDemo(logbook);
        return undefined;
      },
      'The demo did not load. Remove it and try again.',
    );
  const remove = () =>
    attempt(
      { is: 'removing' },
      async () => {
        const result = await logbook.removeDemo();
        if ('removed' in result) return undefined;
        const [what, bikes] =
          'inUseBy' in result ? ['the demo', result.inUseBy] : ['your own', result.holdOwn];
        return `Parts of ${what} are on ${bikes.join(', ')}. Take them off there first.`;
      },
      'The demo could not be removed. Try again.',
    );
  return { state, load, remove };
}
