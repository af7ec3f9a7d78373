import type { Face } from '../../fit/faces/face.ts';
import type { PartAbout } from '../../journal/about.ts';
import type { PartRow } from '../../journal/rows.ts';

/** A face as its standard gives it: what was measured was measured on the other part. */
const bare = ({ faceId, kind, standard, nominal, traits }: Face): Face => ({
  ...{ faceId, kind, standard, nominal, measured: {} },
  ...(traits ? { traits } : {}),
});

/**
 * A second part like one that is known: its name, kind and standards. Serial, wear, photos, what was cut and what was
 * measured belong to the first, so a face that is known by measuring alone is asked for again.
 * @param part the first
 * @param label of the new one, free among all
 * @example partLike(tyre, 'P-014').label //=> 'P-014'
 */
export function partLike(part: PartRow, label: string): PartAbout {
  const { name, kind, origin, originWords, massG, faces = [] } = part;
  const kept = faces.filter(({ standard }) => standard !== null).map(bare);
  return {
    ...{ label, name, kind, origin },
    ...(originWords ? { originWords } : {}),
    ...(massG === undefined ? {} : { massG }),
    ...(kept.length > 0 ? { faces: kept } : {}),
  };
}
