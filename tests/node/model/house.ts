import { IDBFactory } from 'fake-indexeddb';
import type { Entry } from '../../../src/journal/entries.ts';
import { type Logbook, openDue } from '../../../src/logbook.ts';
import { type Database, openDatabase, VIEWS_META } from '../../../src/store/database.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';

/** The worker's door opens this one and no other. */
const NAME = 'pinchbolt';

export type Worker = Awaited<ReturnType<typeof openDue>>;

/** One phone: two tabs and a worker over one store, under one clock. */
export class House {
  readonly clock: { nowMs: number };
  tabs: Logbook[] = [];
  private readonly clocks: { nowMs: number }[] = [];
  private readonly factory = globalThis.indexedDB;

  private constructor(
    startMs: number,
    private readonly store: Database,
    readonly worker: Worker,
  ) {
    let nowMs = startMs;
    const { clocks } = this;
    this.clock = {
      get nowMs() {
        return nowMs;
      },
      set nowMs(ms) {
        nowMs = ms;
        for (const clock of clocks) clock.nowMs = ms;
      },
    };
  }

  /** A phone with an empty store; the store of the one before is forgotten. */
  static async open(startMs: number): Promise<House> {
    globalThis.indexedDB = new IDBFactory();
    const store = await openDatabase(NAME);
    let now = () => startMs;
    const house = new House(startMs, store, await openDue(() => now()));
    now = () => house.clock.nowMs;
    await house.openTab(0);
    await house.openTab(1);
    return house;
  }

  async openTab(at: number): Promise<void> {
    this.tabs[at]?.close();
    this.tabs[at] = await this.page();
  }

  /** One more page of the app. */
  async page(): Promise<Logbook> {
    const { logbook, clock } = await openTestLogbook(this.clock.nowMs, NAME);
    this.clocks.push(clock);
    return logbook;
  }

  tab(at: 0 | 1): Logbook {
    return this.tabs[at] as Logbook;
  }

  /** The lines of the journal as they stand in the store. */
  async entries(): Promise<Entry[]> {
    return (await this.store.getAll('journal')).map(({ entry }) => entry);
  }

  /** Marks the rows as made by other code and opens pages that make them anew; those stay as the tabs. */
  async rebuild(pages: 1 | 2): Promise<void> {
    await this.store.put('meta', { name: VIEWS_META, value: -1 });
    if (pages === 1) return this.openTab(0);
    await Promise.all([this.openTab(0), this.openTab(1)]);
  }

  /** The same while the tabs stay open: another page finds the rows of other code and makes them anew. */
  async rebuildBeside(): Promise<void> {
    await this.store.put('meta', { name: VIEWS_META, value: -1 });
    (await this.page()).close();
  }

  /** A phone whose journal has the same entries, written down in another order. */
  async shuffled(order: (lines: Entry[]) => Entry[]): Promise<House> {
    const lines = await this.store.getAll('journal');
    const places = new Map(lines.map((line) => [line.entry.id, line.places]));
    const other = await House.open(this.clock.nowMs);
    let seq = 0;
    for (const entry of order(lines.map((line) => line.entry))) {
      seq += 1;
      await other.store.put('journal', { seq, entry, places: places.get(entry.id) ?? [] });
    }
    await other.rebuild(1);
    globalThis.indexedDB = this.factory;
    return other;
  }

  close(): void {
    for (const tab of this.tabs) tab.close();
    this.worker.close();
    this.store.close();
  }
}
