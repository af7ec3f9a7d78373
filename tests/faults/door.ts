import type { BrowserContext, Page } from 'playwright-core';
import type { StoredEntry } from './stored.ts';

export interface Command {
  type: string;
  [field: string]: unknown;
}

/** A command, or a list of which all or nothing is done; its photos are made in the page, so many bytes each. */
export interface Order {
  command: Command | Command[];
  photos?: { photoId: string; bytes: number }[];
}

export type Answer =
  | { is: 'done'; entries: StoredEntry[] }
  | { is: 'refused'; refused: string }
  | { is: 'failed'; why: string };

interface InPage {
  pinchboltDoor?: {
    run(command: unknown, photos?: unknown[]): Promise<{ entries: StoredEntry[] } | { refused: string }>;
    opened: Promise<void>;
    state(): { is: string };
  };
  pinchboltTells?(entries: string): Promise<void>;
}

/** What the pages of a browser tell is kept, as soon as it is told; also of commands that screens give. */
export async function listen(
  context: BrowserContext,
  onKept: (entries: StoredEntry[]) => void,
): Promise<void> {
  await context.exposeBinding('pinchboltTells', (_source, entries: string) => {
    onKept(JSON.parse(entries) as StoredEntry[]);
  });
}

/**
 * Takes hold of the page's own logbook where the drawn app keeps it: the built page has no other door. From then
 * on every result of a command that names entries is told to the attacking process at once.
 * @returns the state of the store, as the page sees it
 */
export async function takeDoor(page: Page): Promise<string> {
  return page.evaluate(async () => {
    type Node = { props?: { logbook?: object }; __k?: Node | (Node | null)[] | null };
    const here = globalThis as unknown as InPage;
    const find = (node: Node | null | undefined, depth: number): object | undefined => {
      if (!node || typeof node !== 'object' || depth > 12) return undefined;
      if (node.props?.logbook) return node.props.logbook;
      const below = Array.isArray(node.__k) ? node.__k : [node.__k];
      for (const one of below) {
        const found = find(one, depth + 1);
        if (found) return found;
      }
      return undefined;
    };
    const place = document.getElementById('app') as unknown as Node | null;
    const found = find(place, 0) as (Record<string, unknown> & InPage['pinchboltDoor']) | undefined;
    if (!found) throw new Error('no logbook in what the page draws');
    if (here.pinchboltDoor !== found) {
      here.pinchboltDoor = found;
      // Every way in whose name begins with "run" tells of what it wrote.
      for (const name of Object.keys(found).filter((one) => one.startsWith('run'))) {
        const way = found[name] as (...given: unknown[]) => Promise<{ entries?: unknown[] }>;
        found[name] = async (...given: unknown[]) => {
          const result = await way(...given);
          if (result?.entries?.length) void here.pinchboltTells?.(JSON.stringify(result.entries));
          return result;
        };
      }
    }
    await found.opened;
    return found.state().is;
  });
}

/**
 * Gives commands through the page's own door, all at once.
 * @param gapMs time between two, ms; 0 gives all of them in one turn
 */
export function give(page: Page, orders: Order[], gapMs = 0): Promise<Answer[]> {
  return page.evaluate(
    async ([list, gap]) => {
      const door = (globalThis as unknown as InPage).pinchboltDoor;
      if (!door) throw new Error('the door was not taken');
      const one = async ({ command, photos = [] }: Order): Promise<Answer> => {
        try {
          const made = photos.map(({ photoId, bytes }) => ({
            photoId,
            buf: new Uint8Array(bytes).map((_, at) => (at * 31) % 251).buffer,
            type: 'image/jpeg',
            widthPx: 1,
            heightPx: 1,
          }));
          const result = await door.run(command, made);
          if ('entries' in result)
            return { is: 'done', entries: JSON.parse(JSON.stringify(result.entries)) as StoredEntry[] };
          return { is: 'refused', refused: result.refused };
        } catch (thrown) {
          const { name, message } = thrown as Error;
          return { is: 'failed', why: `${name}: ${message}` };
        }
      };
      const asked: Promise<Answer>[] = [];
      for (const order of list) {
        asked.push(one(order));
        if (gap > 0) await new Promise((over) => setTimeout(over, gap));
      }
      return Promise.all(asked);
    },
    [orders, gapMs] as const,
  );
}
