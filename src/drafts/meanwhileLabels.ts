import type { JointDraft } from './jointDraft.ts';
import type { PartDraft } from './partDraft.ts';
import type { ToolDraft } from './toolDraft.ts';
import type { WheelDraft } from './wheelDraft.ts';

/** What the fields of an edit form are called where the form says that one was changed elsewhere. */
export const partLabels: Record<keyof PartDraft, string> = {
  label: 'Label',
  name: 'Name',
  kind: 'Kind',
  position: 'Front or rear',
  serial: 'Serial number',
  origin: 'Where it came from',
  originWords: 'Details, such as seller or bike',
  condition: 'Condition',
  unknown: 'Not known',
  note: 'Note',
  mass: 'Mass, g',
  km: 'Ridden before, km',
  kmUnknown: 'Distance not known',
  faces: 'Sizes',
};

export const jointLabels: Partial<Record<keyof JointDraft, string>> = {
  kind: 'Kind',
  name: 'Name',
  partIds: 'Parts',
  between: 'Between the parts',
  fasteners: 'Bolts',
  targets: 'Targets',
  note: 'Note',
};

export const toolLabels: Partial<Record<keyof ToolDraft, string>> = {
  name: 'Name',
  min: 'Scale from',
  max: 'Scale to',
  tolerance: 'Tolerance, %',
  lastCheckMs: 'Last checked',
  checkBasis: 'How checked',
  everyDays: 'Check every, days',
  toolClass: 'Kind of tool',
  lever: 'Square drive to grip mark',
  uses: 'Uses since its check',
  note: 'Note',
};

export const wheelLabels: Partial<Record<keyof WheelDraft, string>> = {
  name: 'Name',
  position: 'Front or rear',
  hub: 'Hub',
  rim: 'Rim',
  spokes: 'Spokes',
  drilling: 'Rim holes',
  left: 'Left side',
  drive: 'Drive side',
  erds: 'Effective rim diameter',
  target: 'Target tension',
  limit: 'Rim maker’s maximum',
  gauge: 'Table of your gauge',
  ends: 'Ends of the spoke',
  sounds: 'What you pluck',
  pitches: 'Known tensions',
  note: 'Note',
};
