import type { CommandOf } from '../commands.ts';
import type { Rows } from '../fold.ts';
import { releaseStands } from '../kinds/ofChecks.ts';
import { bikeOf, type Circumstances, freshId, present, type Ruling, refuse, words } from './ruling.ts';

export function startBike(rows: Rows, command: CommandOf<'start-bike'>, now: Circumstances): Ruling {
  const name = words(command.name, 'name-missing');
  const bikeId = freshId(rows, 'bike', command.bikeId, now);
  return [present({ type: 'bike-started', bikeId, name, about: command.about?.trim(), demo: command.demo })];
}

export function describeBike(rows: Rows, command: CommandOf<'describe-bike'>): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  const name = command.name === undefined ? undefined : words(command.name, 'name-missing');
  const { about, photoId } = command;
  if ((name ?? bike.name) === bike.name && (about ?? bike.about) === bike.about && photoId === undefined) {
    refuse('nothing-changes');
  }
  return [present({ type: 'bike-described', bikeId: bike.bikeId, name, about, photoId })];
}

export function putBikeAway(rows: Rows, command: CommandOf<'put-bike-away'>): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  return [{ type: 'bike-put-away', bikeId, why: words(command.why, 'reason-missing') }];
}

export function takeBikeOut(rows: Rows, command: CommandOf<'take-bike-out'>): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  if (bike.putAway === undefined) refuse('nothing-changes');
  return [{ type: 'bike-taken-out', bikeId: bike.bikeId }];
}

export function withdrawRelease(rows: Rows, command: CommandOf<'withdraw-release'>): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  if (!releaseStands(bike)) refuse('not-released', bike.name);
  return [{ type: 'release-withdrawn', bikeId: bike.bikeId, why: words(command.why, 'reason-missing') }];
}

export function addNote(rows: Rows, command: CommandOf<'add-note'>, now: Circumstances): Ruling {
  const { bikeId, partId, jointId, stepId, photoIds } = command;
  const text = photoIds?.length ? command.words.trim() : words(command.words, 'words-missing');
  if (bikeId !== undefined) bikeOf(rows, bikeId);
  const { noteId = now.newId() } = command;
  return [present({ type: 'note-added', noteId, words: text, bikeId, partId, jointId, stepId, photoIds })];
}

export function acceptFinding(rows: Rows, command: CommandOf<'accept-finding'>): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  return [{ type: 'finding-accepted', bikeId, findingId: command.findingId, words: command.words }];
}

export function noteFinding(rows: Rows, command: CommandOf<'note-finding'>): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { findingId, outcome } = command;
  return [{ type: 'finding-noted', bikeId, findingId, words: command.words, outcome }];
}
