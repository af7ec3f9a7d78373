import type { WheelAbout, WheelReadings } from '../aboutWheels.ts';
import { fieldNames, position } from '../checks/about.ts';
import * as about from '../checks/aboutWheels.ts';
import { flag, id, list, maybe, name } from '../checks/field.ts';
import { offset, someLength } from '../checks/quantities.ts';
import type { EntryOf } from '../entries.ts';
import { checkWheel, checkWheelReadings } from '../wheelGuards.ts';
import { described, pick } from './described.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  type Field,
  fixed,
  itsNote,
  itsReason,
  type Kind,
  noted,
  perhapsId,
} from './kind.ts';

/** A built wheel: what it is made of, how it is laced, and what its spokes read. */
const wheel = ({ wheelId }: { wheelId: string }) => wheelId;

const ABOUT = {
  name: correctable(name),
  position: correctable(position),
  parts: fixed(about.wheelParts),
  drilling: correctable(about.drilling),
  pairGapDeg: correctable(about.pairGap),
  pairsLean: correctable(about.pairsLean),
  head: correctable(about.spokeHead),
  leftSide: correctable(about.wheelSide),
  driveSide: correctable(about.wheelSide),
  firstSide: correctable(about.firstSide),
  erds: correctable(about.erds),
  erdEnd: correctable(about.erdEnd),
  erdToEnd: correctable(about.erdToEnd),
  hubHole: correctable(about.hubHole),
  rimOffset: correctable(about.rimOffset),
  stagger: correctable(about.rimOffset),
  target: correctable(about.wheelTension),
  limit: correctable(about.wheelTension),
  gauge: correctable(about.gaugeTable),
  ear: correctable(about.ear),
  note: itsNote,
} satisfies Record<keyof WheelAbout, Field>;
const FIELDS = Object.keys(ABOUT) as (keyof WheelAbout)[];

/** The bike it was on, and its parts, that day: in their histories the entry is found. */
const NAMED = { wheelId: anId, bikeId: perhapsId, partIds: fixed(list(id, 24)) };

export const wheelMade: Kind<'wheel-made'> = {
  fields: { ...NAMED, ...ABOUT },
  facts: [
    begins<EntryOf<'wheel-made'>, 'wheel'>('wheel', wheel, (entry) => ({
      ...(pick(entry as WheelAbout, FIELDS) as WheelAbout),
      group: 'wheel',
      wheelId: entry.wheelId,
      madeAtMs: entry.happenedAtMs,
      readings: [],
    })),
  ],
  guard: (_rows, entry) => checkWheel(entry),
};

export const wheelDescribed: Kind<'wheel-described'> = {
  fields: {
    ...NAMED,
    cleared: fixed(maybe(fieldNames)),
    ...(Object.fromEntries(
      Object.entries(ABOUT).map(([key, { check, as }]) => [key, { check: maybe(check), as }]),
    ) as typeof ABOUT),
  },
  facts: [
    changes<EntryOf<'wheel-described'>, 'wheel'>('wheel', wheel, (row, entry) =>
      described<WheelAbout, typeof row>(row, entry, FIELDS),
    ),
  ],
  guard: (rows, entry) => checkWheel({ ...rows.get('wheel', entry.wheelId), ...entry }),
};

const SET = {
  moment: correctable(about.moment),
  tyre: correctable(about.tyreOn),
  readIn: correctable(about.readIn),
  read: correctable(about.spokesRead),
  tensionsN: correctable(about.tensions),
  lateral: correctable(maybe(someLength)),
  radial: correctable(maybe(someLength)),
  dish: correctable(maybe(offset)),
  sidewaysMm: correctable(about.rimRun),
  outwardMm: correctable(about.rimRun),
  note: itsNote,
} satisfies Record<keyof WheelReadings, Field>;
const OF_SET = Object.keys(SET) as (keyof WheelReadings)[];

export const wheelRead: Kind<'wheel-read'> = {
  fields: { ...NAMED, ...SET },
  facts: [
    changes<EntryOf<'wheel-read'>, 'wheel'>('wheel', wheel, (row, entry) => {
      const set = pick(entry as WheelReadings, OF_SET) as WheelReadings;
      return { ...row, readings: [...row.readings, { ...set, ...noted(entry) }] };
    }),
  ],
  guard: (_rows, entry) => checkWheelReadings(entry),
};

export const wheelTakenApart: Kind<'wheel-taken-apart'> = {
  fields: { ...NAMED, why: itsReason, matters: fixed(flag) },
  facts: [
    changes<EntryOf<'wheel-taken-apart'>, 'wheel'>('wheel', wheel, (row, { why }) => ({
      ...row,
      group: 'wheel-apart',
      apart: why,
    })),
  ],
};
