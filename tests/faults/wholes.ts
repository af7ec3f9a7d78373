import type { Promised, Whole } from './acknowledged.ts';
import type { Command, Order } from './door.ts';

type Torque = { value: number; unit: string };

/** The entry by which a command is found again, where its words, figure or id stand only there. */
function markOf(command: Command): Promised | undefined {
  switch (command.type) {
    case 'start-bike':
      return { type: 'bike-started', bikeId: String(command['bikeId']) };
    case 'add-part':
      return { type: 'part-added', partId: String(command['partId']) };
    case 'make-joint':
      return { type: 'joint-made', jointId: String(command['jointId']) };
    case 'add-note':
      return { type: 'note-added', words: String(command['words']) };
    case 'start-wait':
      return { type: 'wait-started', title: String(command['title']) };
    case 'apply-torque':
      return { type: 'torque-applied', applied: command['applied'] as Torque };
    default:
      return undefined;
  }
}

/** What one command brings of which all or nothing must be there. */
function piecesOf(command: Command): Whole[] {
  switch (command.type) {
    case 'find-torque':
      return [
        {
          what: 'a torque met, and what it was brought to',
          parts: [
            { type: 'torque-found', movedAt: command['movedAt'] as Torque },
            { type: 'torque-applied', applied: command['broughtTo'] as Torque },
          ],
        },
      ];
    case 'split-step':
      return [
        {
          what: 'the pieces of a step',
          parts: (command['titles'] as string[]).map((title) => ({ type: 'step-added', title })),
        },
      ];
    case 'make-joint':
      // The plan brings both steps of a joint with fasteners in one go.
      return [
        {
          what: 'the planned steps of a joint',
          parts: ['fit', 'torque'].map((kind) => ({
            ...{ type: 'step-added', kind, jointId: String(command['jointId']) },
          })),
        },
      ];
    default:
      return [];
  }
}

/** What must be in the store as a whole, or not at all, once an order was given; killed or not. */
export function wholesOf({ command, photos = [] }: Order): Whole[] {
  const list = Array.isArray(command) ? command : [command];
  const marks = list.flatMap((one) => markOf(one) ?? []);
  const parts = [...marks, ...photos.map(({ photoId }) => ({ photoId }))];
  const pieces = list.flatMap(piecesOf);
  const what = list.length > 1 ? 'a list of commands' : 'a command and its photo';
  return parts.length > 1 ? [{ what, parts }, ...pieces] : pieces;
}
