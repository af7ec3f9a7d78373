import type { Whole } from './acknowledged.ts';
import type { Order } from './door.ts';

type Words = Record<string, unknown>;

/** What must be in the store as a whole, or not at all, once an order was given; killed or not. */
export function wholesOf({ command, photos = [] }: Order): Whole[] {
  const given = command as Words & { type: string };
  const pictures = photos.map(({ photoId }) => ({ photoId }));
  switch (given.type) {
    case 'add-note':
      if (pictures.length === 0) return [];
      return [
        {
          what: 'a note and its photo',
          parts: [{ type: 'note-added', words: String(given['words']) }, ...pictures],
        },
      ];
    case 'find-torque':
      return [
        {
          what: 'a torque met, and what it was brought to',
          parts: [
            { type: 'torque-found', movedAt: given['movedAt'] as { value: number; unit: string } },
            { type: 'torque-applied', applied: given['broughtTo'] as { value: number; unit: string } },
          ],
        },
      ];
    case 'split-step':
      return [
        {
          what: 'the pieces of a step',
          parts: (given['titles'] as string[]).map((title) => ({ type: 'step-added', title })),
        },
      ];
    case 'make-joint':
      // The plan brings both steps of a joint with fasteners in one go.
      return [
        {
          what: 'the planned steps of a joint',
          parts: ['fit', 'torque'].map((kind) => ({
            ...{ type: 'step-added', kind, jointId: String(given['jointId']) },
          })),
        },
      ];
    default:
      return [];
  }
}
