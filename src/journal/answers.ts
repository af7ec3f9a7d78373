import type { Entry, EntryOf, Id, OpenItem } from './entries.ts';
import type {
  BikeRow,
  DefectRow,
  FixRow,
  JointRow,
  PartRow,
  RecheckRow,
  ReleaseRow,
  RidesRow,
  SealRow,
  WaitRow,
} from './rows.ts';

/** A duty with a time: a wait, a re-check, or a defect with a date, and the bike it is on. */
export interface DueLine {
  key: string;
  is: 'wait' | 'recheck' | 'defect';
  id: Id;
  bikeId: Id;
  bikeName: string;
  jointId?: Id;
  title: string;
  /** The kind of wait or re-check. */
  kind: string;
  dueAtMs: number;
  startedAtMs: number;
  /** The bike is put away. */
  away?: true;
  /** What a timer was moved by with the phone's clock: it is still the same instant to the person. */
  movedMs?: number;
}

/** Something that waits or falls due, by an instant, by rides or by distance, whichever comes first. */
export interface Duty extends Omit<DueLine, 'is' | 'bikeId' | 'dueAtMs' | 'movedMs'> {
  is: DueLine['is'] | 'tool';
  /** Absent for a tool, which is on no bike. */
  bikeId?: Id;
  /** When it falls due, or fell due; absent while rides or distance alone decide. */
  dueAtMs?: number;
  /** What may still be ridden before it falls due. */
  left: { rides?: number; km?: number };
  /** When it is likely to be due: by the clock, or before that at the pace the bike is ridden at. */
  likelyMs: number;
  /** By when it is due at the latest: by the clock where it has a time, else at nine on the likely day. */
  latestByMs: number;
}

/** A line of a history, with what later entries made of it. */
export interface HistoryLine {
  seq: number;
  entry: Entry;
  /** As it reads today; nothing where it is struck out. */
  now: Entry | undefined;
  fixes: FixRow['fixes'];
}

/** A line that this version cannot read: written by a newer one. It is kept as it is. */
export interface UnreadLine {
  seq: number;
  unread: { id: Id; v: number; type: string; happenedAtMs: number };
}

/** Where a page of a history ended: how the last line sorts, and its id. */
export type HistoryMark = readonly [when: string, id: Id];

export interface HistoryPage {
  lines: HistoryLine[];
  /** Lines among them that this version cannot read. */
  unread: UnreadLine[];
  /** Where the next page starts; absent at the end. */
  next?: HistoryMark;
}

/** A bike as it was at an instant. */
export interface AsBuilt {
  bike: BikeRow | undefined;
  parts: PartRow[];
  joints: JointRow[];
  rides: RidesRow | undefined;
  atMs: number;
  seals: SealRow[];
  /** Those that run and those that are over. */
  waits: WaitRow[];
  defects: DefectRow[];
  rechecks: RecheckRow[];
  /** What was open at that instant, word for word. */
  open: OpenItem[];
  /** Every release until then, with what had been ridden when it was signed. */
  releases: (ReleaseRow['releases'][number] & { ridden: Ridden })[];
  /** What was looked over before riding, oldest first. */
  inspections: { groupId: string; atMs: number; items: EntryOf<'ride-check-confirmed'>['items'] }[];
}

/** Total time in service: rides, distance and minutes. */
export interface Ridden {
  count: number;
  km: number;
  minutes: number;
}
