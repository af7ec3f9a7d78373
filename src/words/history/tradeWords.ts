import type {
  BetweenKind,
  ClampAbout,
  CutKind,
  Origin,
  Outcome,
  Place,
  TargetSource,
  ToolSnapshot,
  WaitKind,
} from '../../journal/entries.ts';
import type { Names } from './names.ts';

/** How the journal's short names are written for people. Each list is complete by type. */

export const originWords: Record<Origin, string> = {
  'bought-new': 'bought new',
  'bought-used': 'bought used',
  'off-a-bike': 'off another bike',
  gift: 'a gift',
  found: 'found',
  made: 'made here',
  unknown: 'origin unknown',
};

export const betweenWords: Record<BetweenKind, string> = {
  dry: 'nothing, dry',
  grease: 'grease',
  'assembly-paste': 'assembly paste',
  'anti-seize': 'anti-seize',
  threadlocker: 'threadlocker',
  'retaining-compound': 'retaining compound',
  adapter: 'adapter',
  shim: 'shim',
  spacer: 'spacer',
  washer: 'washer',
  other: 'something else',
};

export const constructionWords: Record<ClampAbout['construction'], string> = {
  'two-piece': 'two halves, screws on both sides of the tube',
  'one-slit-flexible': 'one slit, thin body',
  'one-slit-stiff': 'one slit, thick body',
};

export const sourceWords: Record<TargetSource, string> = {
  'printed-on-the-part': 'printed on the part',
  'makers-document': 'from the maker’s document',
  'mating-part': 'from the part it meets',
  'general-table': 'from a general table',
  'own-judgement': 'our suggestion',
  none: 'no source',
};

export const cutWords: Record<CutKind, { done: string; label: string }> = {
  file: { done: 'filed', label: 'Filed' },
  saw: { done: 'sawn', label: 'Sawn' },
  drill: { done: 'drilled', label: 'Drilled' },
  braze: { done: 'brazed', label: 'Brazed' },
  'cold-set': { done: 'cold-set', label: 'Cold-set' },
  ream: { done: 'reamed', label: 'Reamed' },
  grind: { done: 'ground', label: 'Ground' },
  turn: { done: 'turned', label: 'Turned' },
  tap: { done: 'tapped', label: 'Tapped' },
  bond: { done: 'bonded', label: 'Bonded' },
  other: { done: 'changed', label: 'Other' },
};

export const outcomeWords: Record<Outcome, string> = {
  held: 'OK',
  moved: 'moved before the target was reached',
  turned: 'it has turned',
};

export const waitKindWords: Record<WaitKind, string> = {
  cure: 'threadlocker curing',
  seal: 'tyre sealing',
  adhesive: 'adhesive setting',
  other: 'waiting',
};

/** How far a tool can be trusted. */
export const toolStateWords: Record<ToolSnapshot['state'], string> = {
  checked: 'checked',
  'check-overdue': 'check overdue',
  'never-checked': 'never checked',
  dropped: 'dropped since its check',
};

/** A tool with the state it was in that day. @example toolWords(tool) //=> 'small wrench (checked)' */
export function toolWords({ name, state }: ToolSnapshot): string {
  return `${name} (${toolStateWords[state]})`;
}

/** Where a part is, as it stands behind a verb. @example placeWords({ on: 'shelf' }, names) //=> 'on the shelf' */
export function placeWords(place: Place, names: Names): string {
  switch (place.on) {
    case 'shelf':
      return place.tag ? `on the shelf, tag: ${place.tag}` : 'on the shelf';
    case 'bike':
      return `on ${names.bike(place.bikeId) ?? 'a bike no longer named'}`;
    case 'quarantine':
      return `in quarantine (${place.why})`;
    case 'scrapped':
      return `scrapped (${place.how})`;
    case 'sold':
      return place.to ? `sold to ${place.to}` : 'sold';
  }
}
