import type { EmbedmentRow } from '../../mechanics/screws/settling.ts';
import { founded } from '../known.ts';

/**
 * Guide values for what surfaces give when they bed into one another, µm. VDI 2230-1, table of embedment,
 * from memory and not read again. Paint, anodising, grit paste, plastic and carbon stand outside the table:
 * they give more, and no source says how much.
 */
export const embedment: readonly EmbedmentRow[] = [
  { roughness: 'fine', load: 'tension', threadUm: 3, perHeadUm: 2.5, perInnerUm: 1.5 },
  { roughness: 'fine', load: 'shear', threadUm: 3, perHeadUm: 3, perInnerUm: 2 },
  { roughness: 'medium', load: 'tension', threadUm: 3, perHeadUm: 3, perInnerUm: 2 },
  { roughness: 'medium', load: 'shear', threadUm: 3, perHeadUm: 4.5, perInnerUm: 2.5 },
  { roughness: 'coarse', load: 'tension', threadUm: 3, perHeadUm: 4, perInnerUm: 3 },
  { roughness: 'coarse', load: 'shear', threadUm: 3, perHeadUm: 6.5, perInnerUm: 3.5 },
];

export const embedmentSource = founded('VDI 2230-1, guide values for embedment, from memory', 'memory', 0);
