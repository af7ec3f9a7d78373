import type { Entry, Id } from '../../../src/journal/entries.ts';
import {
  type BikeAnswer,
  bikeAnswer,
  type RidesAnswer,
  ridesAnswer,
  type StepAnswer,
  stepAnswer,
} from './bikeModel.ts';
import {
  type JointAnswer,
  jointAnswer,
  type PartAnswer,
  partAnswer,
  type SealAnswer,
  sealAnswer,
} from './jointModel.ts';
import { idsOf, readings, type Thing } from './reading.ts';
import {
  type DefectAnswer,
  defectAnswer,
  type RecheckAnswer,
  recheckAnswer,
  type WaitAnswer,
  waitAnswer,
} from './timedModel.ts';

/** Everything the naive model knows, by id. */
export interface ModelAnswers {
  /** The entries that count, as they read, in order. */
  read: Entry[];
  bikes: Map<Id, BikeAnswer>;
  rides: Map<Id, RidesAnswer>;
  parts: Map<Id, PartAnswer>;
  joints: Map<Id, JointAnswer>;
  seals: Map<Id, SealAnswer>;
  steps: Map<Id, StepAnswer>;
  waits: Map<Id, WaitAnswer>;
  rechecks: Map<Id, RecheckAnswer>;
  defects: Map<Id, DefectAnswer>;
}

/**
 * A second, naive model of the logbook: written from the numbered rules of DEVELOPERS.md, sharing no code with
 * the fold. It sorts, lays the corrections over, and answers each question by filtering the whole journal.
 * @param all the lines of the journal, in any order
 * @param asOfMs answers for a past instant
 */
export function modelAnswers(all: readonly Entry[], asOfMs?: number): ModelAnswers {
  const read = readings(all, asOfMs);
  const each = <A>(thing: Thing, answer: (id: Id) => A | undefined): Map<Id, A> =>
    new Map(
      idsOf(thing, read).flatMap((id) => {
        const known = answer(id);
        return known === undefined ? [] : [[id, known] as const];
      }),
    );
  return {
    read,
    bikes: each('bike', (id) => bikeAnswer(id, read)),
    rides: each('bike', (id) => ridesAnswer(id, read)),
    parts: each('part', (id) => partAnswer(id, read)),
    joints: each('joint', (id) => jointAnswer(id, read)),
    seals: each('joint', (id) => sealAnswer(id, read)),
    steps: each('step', (id) => stepAnswer(id, read)),
    waits: each('wait', (id) => waitAnswer(id, read)),
    rechecks: each('recheck', (id) => recheckAnswer(id, read, all)),
    defects: each('defect', (id) => defectAnswer(id, read)),
  };
}
