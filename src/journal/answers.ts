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
}

/** A line of a history, with what later entries made of it. */
export interface HistoryLine {
  seq: number;
  entry: Entry;
  fixes: FixRow['fixes'];
}

export interface HistoryPage {
  lines: HistoryLine[];
  /** Where the next page starts; absent at the end. */
  next?: [string, number];
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
