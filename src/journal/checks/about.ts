import type { Face, Measured } from '../../fit/faces/face.ts';
import type { FemaleMaterial, Lubricant, ScrewMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import { recheckInstructions } from '../../standards/checks/recheckSchedule.ts';
import { jointKinds } from '../../standards/jointKinds.ts';
import type { WorkId } from '../../standards/jointWork.ts';
import type { ToolClass } from '../../standards/screws/toolClasses.ts';
import type {
  BarAbout,
  Between,
  BetweenKind,
  ClampAbout,
  CutKind,
  DiametersAbout,
  ExtensionAbout,
  Fastener,
  OneWayChange,
  OpenItem,
  Origin,
  Place,
  Reading,
  SealMark,
  StepKind,
  Target,
  TargetSource,
  ToolSnapshot,
  WaitKind,
} from '../about.ts';
import {
  amount,
  type Check,
  either,
  exactly,
  flag,
  id,
  instant,
  list,
  maybe,
  name,
  object,
  oneOf,
  reason,
  record,
  sentence,
  short,
  text,
  variants,
  whole,
} from './field.ts';
import { length, offset, pressure, someLength, temperature, torque, volume } from './quantities.ts';

/** Checks of what entries are made of: one for each shape, whatever entry or correction carries it. */

/** More photos than a person takes of one thing. */
export const photoIds: Check = maybe(list(id, 100));

export const place: Check = variants('on', {
  shelf: object<Extract<Place, { on: 'shelf' }>>({ on: text, tag: maybe(short) }),
  bike: object<Extract<Place, { on: 'bike' }>>({ on: text, bikeId: id }),
  quarantine: object<Extract<Place, { on: 'quarantine' }>>({ on: text, why: reason }),
  scrapped: object<Extract<Place, { on: 'scrapped' }>>({ on: text, how: reason }),
  sold: object<Extract<Place, { on: 'sold' }>>({ on: text, to: maybe(short) }),
});

export const origin: Check = oneOf<Origin>({
  'bought-new': 1,
  'bought-used': 1,
  'off-a-bike': 1,
  gift: 1,
  found: 1,
  made: 1,
  unknown: 1,
});

const finite: Check = amount(-1e9, 1e9);

/** A size no part can have is kept as it was typed and told on the screen; what is no number is not. */
const measured: Check = object<Measured>({
  value: finite,
  unit: oneOf<Measured['unit']>({ mm: 1, cm: 1, '[in_i]': 1, bar: 1, '1': 1 }),
  typed: short,
  uncertaintyMm: amount(0, 1e6),
});

const face: Check = object<Face>({
  faceId: id,
  kind: id,
  standard: either(id, exactly(null)),
  nominal: record(id, finite, 60),
  measured: record(id, measured, 60),
  traits: maybe(record(id, short, 60)),
  notes: maybe(text),
});

export const faces: Check = maybe(list(face, 60));
export const position: Check = maybe(oneOf<'front' | 'rear'>({ front: 1, rear: 1 }));
/** Heavier than a cargo bike with its load. Own judgement. */
export const massG: Check = maybe(amount(0, 100_000, { above: true }));
export const kmBefore: Check = maybe(either(exactly('unknown'), amount(0, 1_000_000)));

export const jointKind: Check = oneOf(Object.fromEntries(jointKinds.map(({ kind }) => [kind, 1])));

export const target: Check = object<Target>({
  source: oneOf<TargetSource>({
    'printed-on-the-part': 1,
    'makers-document': 1,
    'mating-part': 1,
    'general-table': 1,
    'own-judgement': 1,
    none: 1,
  }),
  torque: maybe(torque),
  upTo: maybe(torque),
  partId: maybe(id),
  reference: maybe(text),
});

export const betweenKind: Check = oneOf<BetweenKind>({
  dry: 1,
  grease: 1,
  'assembly-paste': 1,
  'anti-seize': 1,
  threadlocker: 1,
  'retaining-compound': 1,
  adapter: 1,
  shim: 1,
  spacer: 1,
  washer: 1,
  other: 1,
});

export const between: Check = object<Between>({
  kind: betweenKind,
  partId: maybe(id),
  words: maybe(text),
});

/** Above this a count is a slip of the finger: even the spokes of a wheel are fewer. */
const MOST_FASTENERS = 72;
export const boltCount: Check = whole(1, 200, 'bolts-missing');

export const fastener: Check = object<Fastener>({
  thread: short,
  count: whole(1, MOST_FASTENERS, 'fastener-count'),
  hand: oneOf<'right' | 'left'>({ right: 1, left: 1 }),
  words: maybe(text),
  screw: maybe(oneOf<ScrewMaterial>({ steel: 1, stainless: 1, aluminium: 1, titanium: 1, unknown: 1 })),
  propertyClass: maybe(short),
  female: maybe(
    oneOf<FemaleMaterial>({
      steel: 1,
      stainless: 1,
      'cast-iron': 1,
      brass: 1,
      aluminium: 1,
      magnesium: 1,
      titanium: 1,
      plastic: 1,
      unknown: 1,
    }),
  ),
  onThread: maybe(
    oneOf<Lubricant>({
      none: 1,
      oil: 1,
      grease: 1,
      'anti-seize': 1,
      moly: 1,
      wax: 1,
      'threadlocker-wet': 1,
      unknown: 1,
    }),
  ),
  grip: maybe(someLength),
  variant: maybe(short),
});

export const clamp: Check = object<ClampAbout>({
  construction: oneOf<ClampAbout['construction']>({
    'two-piece': 1,
    'one-slit-flexible': 1,
    'one-slit-stiff': 1,
  }),
  tubeArm: maybe(someLength),
  boltArm: maybe(someLength),
  shim: maybe(oneOf<NonNullable<ClampAbout['shim']>>({ slit: 1, closed: 1, bonded: 1 })),
});

export const bar: Check = object<BarAbout>({ rise: offset, reach: offset });
export const extension: Check = object<ExtensionAbout>({
  length: someLength,
  angleDeg: amount(-360, 360),
});

export const diameters: Check = object<DiametersAbout>({ bore: someLength, outside: someLength });

export const stepKind: Check = oneOf<StepKind>({
  fit: 1,
  torque: 1,
  press: 1,
  lock: 1,
  seat: 1,
  measure: 1,
  cut: 1,
  adjust: 1,
  check: 1,
});

export const work: Check = oneOf<WorkId>({
  ...{ tension: 1, true: 1, dish: 1, play: 1, turns: 1, count: 1, slack: 1, bleed: 1, cable: 1, pads: 1 },
});

export const waitKind: Check = oneOf<WaitKind>({ cure: 1, seal: 1, adhesive: 1, other: 1 });
/** Sixty days: longer than any adhesive, seal or settling of this trade. Own judgement. */
const LONGEST_WAIT_MS = 60 * 86_400_000;
export const waitMs: Check = amount(0, LONGEST_WAIT_MS, { above: true });

export const toolClass: Check = oneOf<ToolClass>({
  click: 1,
  'click-fixed': 1,
  beam: 1,
  dial: 1,
  electronic: 1,
  screwdriver: 1,
  'by-hand': 1,
});
export const toolNm: Check = amount(0, 1000);
export const lever: Check = maybe(someLength);

export const toolSnapshot: Check = object<ToolSnapshot>({
  toolId: id,
  name,
  minNm: maybe(toolNm),
  maxNm: maybe(toolNm),
  lastCheckMs: maybe(instant),
  state: oneOf<ToolSnapshot['state']>({
    checked: 1,
    'check-overdue': 1,
    'never-checked': 1,
    dropped: 1,
  }),
});

const reading: Check = object<Reading>({
  pressure: maybe(pressure),
  temperature: maybe(temperature),
  gauge: maybe(short),
});
/** A reading that is worth nothing without its pressure. */
const pressureRead: Check = (value) =>
  reading(value) ?? ((value as Reading).pressure === undefined ? { refused: 'not-a-number' } : undefined);

type Mark<M extends SealMark['mark']> = Extract<SealMark, { mark: M }>;

export const sealMark: Check = variants('mark', {
  seated: object<Mark<'seated'>>({
    mark: text,
    dry: flag,
    beadLine: oneOf<Mark<'seated'>['beadLine']>({ even: 1, uneven: 1, 'not-looked': 1 }),
    reading: maybe(reading),
  }),
  'dry-reading': object<Mark<'dry-reading'>>({ mark: text, reading: pressureRead }),
  sealant: object<Mark<'sealant'>>({ mark: text, sealantKind: maybe(sentence), amount: maybe(volume) }),
  'spun-and-shaken': object<Mark<'spun-and-shaken'>>({ mark: text }),
  'laid-left': object<Mark<'laid-left'>>({ mark: text }),
  'laid-right': object<Mark<'laid-right'>>({ mark: text }),
  soaped: object<Mark<'soaped'>>({
    mark: text,
    bubbles: oneOf<Mark<'soaped'>['bubbles']>({
      none: 1,
      bead: 1,
      valve: 1,
      'spoke-holes': 1,
      sidewall: 1,
    }),
    words: maybe(text),
  }),
  reading: object<Mark<'reading'>>({ mark: text, reading: pressureRead }),
  burped: object<Mark<'burped'>>({ mark: text, words: maybe(text) }),
  pumped: object<Mark<'pumped'>>({ mark: text, reading: pressureRead }),
  'let-down': object<Mark<'let-down'>>({ mark: text, reading: maybe(reading) }),
  riding: object<Mark<'riding'>>({ mark: text, pressure, temperature: maybe(temperature) }),
  verdict: object<Mark<'verdict'>>({
    mark: text,
    verdict: oneOf<Mark<'verdict'>['verdict']>({
      holds: 1,
      'still-sealing': 1,
      leaks: 1,
      'will-not-seat': 1,
    }),
    words: maybe(text),
  }),
});

export const cutKind: Check = oneOf<CutKind>({
  file: 1,
  saw: 1,
  drill: 1,
  braze: 1,
  'cold-set': 1,
  ...{ turn: 1, tap: 1, bond: 1 },
  ream: 1,
  grind: 1,
  other: 1,
});
export { length as cutLength };

const inspectionFields = object<NonNullable<OneWayChange['inspection']>>({
  everyDays: maybe(amount(0, 3660, { above: true })),
  everyKm: maybe(amount(0, 100_000, { above: true })),
  words: sentence,
});
export const inspection: Check = (value) => {
  const found = inspectionFields(value);
  if (found) return found;
  const { everyDays, everyKm } = value as NonNullable<OneWayChange['inspection']>;
  return everyDays === undefined && everyKm === undefined ? { refused: 'limit-missing' } : undefined;
};

export const instructionKind: Check = oneOf(recheckInstructions);

export const openItem: Check = object<OpenItem>({
  what: oneOf<OpenItem['what']>({
    'joint-open': 1,
    'hand-tight': 1,
    'no-torque-source': 1,
    uncured: 1,
    unsealed: 1,
    'step-open': 1,
    'step-skipped': 1,
    'recheck-overdue': 1,
    defect: 1,
    'check-open': 1,
    'check-finding': 1,
    'not-fitted': 1,
    'fit-finding': 1,
    'moved-twice': 1,
    'change-open': 1,
  }),
  words: text,
  jointId: maybe(id),
  partId: maybe(id),
  blocks: flag,
  blocksFull: maybe(exactly(true)),
});

export * from './choices.ts';
