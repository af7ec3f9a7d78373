import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

export interface ChainRow extends InterfaceRow {
  /** Diameter of the rollers, mm; null where it is not printed. */
  rollerMm: number | null;
}

const sizes = 'seller’s page on chain sizes';
const gost = 'state standard’s table of roller chains in a public repository';

const cogs = 'forum thread of measured sprockets';
const narrow =
  'article on the compatibility of chains (11/128 in from nine sprockets on); a wiki’s table (2.2)';
const rivets = 'gear seller’s page on chain widths';

const chain = (
  id: string,
  label: string,
  innerMm: SizeSpan,
  teethMm: number,
  rollerMm: number | null,
  source: string,
  others: ChainRow['others'] = [],
): ChainRow => ({
  id,
  label,
  faces: {
    chain: { chainWidthMm: innerMm },
    'ring-teeth': { chainWidthMm: teethMm },
    'sprocket-teeth': { chainWidthMm: teethMm },
  },
  rollerMm,
  others,
  source,
  known: 'seen',
});

/** Rollers of every bicycle chain, and the tooth gaps cut for them. */
export const BICYCLE_ROLLER_MM = 7.75;

const catalogue = 'industrial catalogue of half-inch sprockets and chains';

/**
 * Chains by the width between their inner plates, and the teeth cut for them. All have half an inch of
 * pitch. The printed width is nominal, the plates stand a little wider.
 */
export const chains: readonly ChainRow[] = [
  chain('chain-1/8', '1/8 in', [3.175, 3.3], 3.175, BICYCLE_ROLLER_MM, `${gost}; ${sizes}`, [
    { what: 'tooth of a sprocket', mm: 2.91, source: cogs },
  ]),
  chain('chain-3/32', '3/32 in', [2.38, 2.4], 2.38, BICYCLE_ROLLER_MM, `${gost}; ${sizes}`, [
    { what: 'tooth of a sprocket', mm: [2.07, 2.28], source: cogs },
    { what: 'over the rivets, up to 8 sprockets', mm: 7.1, source: rivets },
    { what: 'over the rivets, 9 sprockets', mm: [6.6, 6.8], source: rivets },
    { what: 'over the rivets, 10 sprockets', mm: 6.2, source: rivets },
  ]),
  chain('chain-11/128', '11/128 in, 9 sprockets and more', [2.18, 2.2], 2.18, BICYCLE_ROLLER_MM, narrow),
  chain('chain-3/16', '3/16 in, heavy', 4.88, 4.88, null, catalogue),
  {
    id: 'chain-08b',
    label: '08B, an industrial chain',
    faces: { chain: { chainWidthMm: 7.75 } },
    rollerMm: 8.51,
    remark: 'The pitch is right and the rollers are too fat: no bicycle chain.',
    source: catalogue,
    known: 'seen',
  },
];
