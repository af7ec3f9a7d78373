import type { Entry, Id } from './entries.ts';
import type { Rows } from './fold.ts';
import type { Row, RowKind, RowOf } from './rows.ts';

const RECENT = 16;

/** Rows held in memory: for the state of a bike on another day, and for folding a whole journal. */
export class MemoryRows implements Rows {
  readonly rows = new Map<string, Row>();
  readonly #groups = new Map<string, Map<string, Row>>();
  readonly #entries = new Map<Id, Entry>();
  readonly #places = new Map<string, Entry[]>();

  get<K extends RowKind>(kind: K, id: Id): RowOf[K] | undefined {
    return this.rows.get(`${kind}/${id}`) as RowOf[K] | undefined;
  }

  group<K extends RowKind>(_kind: K, group: string): RowOf[K][] {
    return [...(this.#groups.get(group)?.values() ?? [])].sort((a, b) =>
      a.key < b.key ? -1 : 1,
    ) as RowOf[K][];
  }

  all<K extends RowKind>(kind: K): RowOf[K][] {
    return [...this.rows.values()].filter(({ is }) => is === kind) as RowOf[K][];
  }

  entry(id: Id): Entry | undefined {
    return this.#entries.get(id);
  }

  facts(key: string): Entry[] {
    return this.#places.get(key) ?? [];
  }

  recent(): Entry[] {
    return [...this.#entries.values()].slice(-RECENT);
  }

  put(row: Row): void {
    this.drop(row.key);
    this.rows.set(row.key, row);
    if (row.group === undefined) return;
    const group = this.#groups.get(row.group);
    if (group) group.set(row.key, row);
    else this.#groups.set(row.group, new Map([[row.key, row]]));
  }

  drop(key: string): void {
    const old = this.rows.get(key);
    if (old?.group !== undefined) this.#groups.get(old.group)?.delete(key);
    this.rows.delete(key);
  }

  append(entry: Entry, places: string[]): void {
    this.#entries.set(entry.id, entry);
    for (const place of places) {
      const at = this.#places.get(place);
      if (at) at.push(entry);
      else this.#places.set(place, [entry]);
    }
  }
}
