import type { AsBuilt, DueLine, Duty, HistoryLine, HistoryMark, HistoryPage } from '../journal/answers.ts';
import type { Photo } from '../journal/commands.ts';
import type { Id, Settings } from '../journal/entries.ts';
import { labelHolder } from '../journal/labelHolder.ts';
import type {
  BikeRow,
  DefectRow,
  FindingRow,
  JointRow,
  PartRow,
  RecheckRow,
  RidesRow,
  SealRow,
  StepRow,
  ToolRow,
  WaitRow,
  WheelRow,
} from '../journal/rows.ts';
import { stepList } from '../journal/stepList.ts';
import { titleToday } from '../journal/titleToday.ts';
import type { Database } from './database.ts';
import type { ReleaseNow } from './deepViews.ts';
import { due, history, line, momentOf, photo, settings } from './read.ts';

/** What a view is asked that is one for the whole logbook. */
export type NoQuestion = Record<string, never>;

/** What can be asked of the logbook, and what is given. */
export interface Views {
  bikes: { ask: NoQuestion; gives: BikeRow[] };
  due: { ask: { untilMs: number }; gives: DueLine[] };
  /** All that waits or falls due, by time, rides or distance. */
  duties: { ask: NoQuestion; gives: Duty[] };
  bike: {
    ask: { bikeId: Id };
    gives:
      | {
          bike: BikeRow;
          parts: PartRow[];
          joints: JointRow[];
          steps: StepRow[];
          waits: WaitRow[];
          rechecks: RecheckRow[];
          seals: SealRow[];
          defects: DefectRow[];
          findings: FindingRow[];
          rides: RidesRow | undefined;
        }
      | undefined;
  };
  bench: {
    ask: { bikeId: Id };
    gives:
      | {
          bike: BikeRow;
          steps: StepRow[];
          joints: JointRow[];
          parts: PartRow[];
          waits: WaitRow[];
          seals: SealRow[];
          tools: ToolRow[];
        }
      | undefined;
  };
  joint: {
    ask: { jointId: Id };
    gives:
      | {
          joint: JointRow;
          bike: BikeRow | undefined;
          parts: PartRow[];
          waits: WaitRow[];
          seal: SealRow | undefined;
          rechecks: RecheckRow[];
        }
      | undefined;
  };
  part: {
    ask: { partId: Id };
    gives: { part: PartRow; bike: BikeRow | undefined; joints: JointRow[] } | undefined;
  };
  /** Parts in one place: `shelf`, `quarantine`, `scrapped`, `sold`, or a bike's id. */
  parts: { ask: { at: string }; gives: PartRow[] };
  /** The part that keeps a label from another, as a command would be judged. */
  'label-holder': { ask: { label: string; partId?: Id | undefined }; gives: PartRow | undefined };
  tools: { ask: NoQuestion; gives: ToolRow[] };
  /** Every wheel that is built, by name. */
  wheels: { ask: NoQuestion; gives: WheelRow[] };
  /** A wheel with its parts, and the bike its hub is on. */
  wheel: {
    ask: { wheelId: Id };
    gives: { wheel: WheelRow; parts: PartRow[]; bike: BikeRow | undefined } | undefined;
  };
  settings: { ask: NoQuestion; gives: Settings };
  rechecks: { ask: { bikeId: Id }; gives: RecheckRow[] };
  release: { ask: { bikeId: Id }; gives: ReleaseNow | undefined };
  /** `b:`, `p:`, `j:` or `t:` with an id; newest first. */
  history: { ask: { place: string; after?: HistoryMark; limit: number }; gives: HistoryPage };
  entry: { ask: { entryId: Id }; gives: HistoryLine | undefined };
  'as-built': { ask: { bikeId: Id; atMs: number }; gives: AsBuilt };
  photo: { ask: { photoId: Id }; gives: Photo | undefined };
  /** How much there is. */
  size: { ask: NoQuestion; gives: { entries: number; photos: number } };
}

export type ViewName = keyof Views;

type Readers = { [V in ViewName]: (db: Database, ask: Views[V]['ask']) => Promise<Views[V]['gives']> };

/** The views that fold or judge, loaded with the writing half because they share its code. */
export interface DeepViews {
  asBuilt: typeof import('./deepViews.ts')['asBuilt'];
  releaseNow: typeof import('./deepViews.ts')['releaseNow'];
  duties: typeof import('./deepViews.ts')['duties'];
}

/** Waits or re-checks of one bike under the titles that hold today. */
function today<T extends WaitRow | RecheckRow>(rows: T[], joints: JointRow[]): T[] {
  return rows.map((row) =>
    titleToday(
      row,
      joints.find(({ jointId }) => jointId === row.jointId),
    ),
  );
}

const allParts = async (db: Database): Promise<PartRow[]> =>
  (await db.getAll('views', IDBKeyRange.bound('part/', 'part0', false, true))) as PartRow[];

/**
 * How each view is read.
 * @param now clock, ms UTC
 * @param theWriter loads the views that fold or judge
 */
export function readersFor(now: () => number, theWriter: () => Promise<DeepViews>): Readers {
  return {
    bikes: (db) => momentOf(db).group('bike', 'bike'),
    due: (db, { untilMs }) => due(db, untilMs),
    duties: async (db) => (await theWriter()).duties(db, now()),
    bike: async (db, { bikeId }) => {
      const { row, group } = momentOf(db);
      const [bike, parts, joints, steps, waits, rechecks, seals, defects, findings, rides] =
        await Promise.all([
          row('bike', bikeId),
          group('part', `part@${bikeId}`),
          group('joint', `joint@${bikeId}`),
          group('step', `step@${bikeId}`),
          group('wait', `wait@${bikeId}`),
          group('recheck', `recheck@${bikeId}`),
          group('seal', `seal@${bikeId}`),
          group('defect', `defect@${bikeId}`),
          group('finding', `finding@${bikeId}`),
          row('rides', bikeId),
        ]);
      return (
        bike && {
          ...{ bike, parts, joints, steps: stepList(steps), seals, defects, findings, rides },
          waits: today(waits, joints),
          rechecks: today(rechecks, joints),
        }
      );
    },
    bench: async (db, { bikeId }) => {
      const { row, group } = momentOf(db);
      const [bike, steps, joints, parts, waits, seals, tools] = await Promise.all([
        row('bike', bikeId),
        group('step', `step@${bikeId}`),
        group('joint', `joint@${bikeId}`),
        group('part', `part@${bikeId}`),
        group('wait', `wait@${bikeId}`),
        group('seal', `seal@${bikeId}`),
        group('tool', 'tool'),
      ]);
      return (
        bike && { bike, steps: stepList(steps), joints, parts, waits: today(waits, joints), seals, tools }
      );
    },
    joint: async (db, { jointId }) => {
      const { row, group } = momentOf(db);
      const joint = await row('joint', jointId);
      if (!joint) return undefined;
      const named = [...joint.partIds, ...joint.between.flatMap(({ partId }) => (partId ? [partId] : []))];
      const [bike, parts, waits, seal, rechecks] = await Promise.all([
        row('bike', joint.bikeId),
        Promise.all(named.map((id) => row('part', id))),
        group('wait', `wait@${joint.bikeId}`),
        row('seal', jointId),
        group('recheck', `recheck@${joint.bikeId}`),
      ]);
      return {
        joint,
        bike,
        parts: parts.filter((part) => part !== undefined),
        waits: today(
          waits.filter((wait) => wait.jointId === jointId),
          [joint],
        ),
        seal,
        rechecks: today(
          rechecks.filter((recheck) => recheck.jointId === jointId),
          [joint],
        ),
      };
    },
    part: async (db, { partId }) => {
      const { row, group } = momentOf(db);
      const part = await row('part', partId);
      if (!part) return undefined;
      if (part.place.on !== 'bike') return { part, bike: undefined, joints: [] };
      const { bikeId } = part.place;
      const [bike, joints] = await Promise.all([row('bike', bikeId), group('joint', `joint@${bikeId}`)]);
      const holds = (joint: JointRow) =>
        joint.partIds.includes(partId) || joint.between.some((between) => between.partId === partId);
      return { part, bike, joints: joints.filter(holds) };
    },
    parts: (db, { at }) => momentOf(db).group('part', `part@${at}`),
    'label-holder': async (db, { label, partId }) => labelHolder(await allParts(db), partId, label),
    tools: (db) => momentOf(db).group('tool', 'tool'),
    wheels: (db) => momentOf(db).group('wheel', 'wheel'),
    wheel: async (db, { wheelId }) => {
      const { row } = momentOf(db);
      const wheel = await row('wheel', wheelId);
      if (!wheel) return undefined;
      const named = await Promise.all(wheel.parts.map(({ partId }) => row('part', partId)));
      const parts = named.filter((part) => part !== undefined);
      const hub = parts.find(({ partId }) =>
        wheel.parts.some((one) => one.as === 'hub' && one.partId === partId),
      );
      const place = (hub ?? parts[0])?.place;
      return { wheel, parts, bike: place?.on === 'bike' ? await row('bike', place.bikeId) : undefined };
    },
    settings: (db) => settings(db),
    rechecks: async (db, { bikeId }) => {
      const { group } = momentOf(db);
      const [rechecks, joints] = await Promise.all([
        group('recheck', `recheck@${bikeId}`),
        group('joint', `joint@${bikeId}`),
      ]);
      return today(rechecks, joints);
    },
    release: async (db, { bikeId }) => (await theWriter()).releaseNow(db, bikeId, now()),
    history: (db, { place, after, limit }) => history(db, place, after, limit),
    entry: (db, { entryId }) => line(db, entryId),
    'as-built': async (db, { bikeId, atMs }) => (await theWriter()).asBuilt(db, bikeId, atMs),
    photo: (db, { photoId }) => photo(db, photoId),
    size: async (db) => ({ entries: await db.count('journal'), photos: await db.count('photos') }),
  };
}
