import { straightSideWidthBreaks } from '../../mechanics/tyres/pressureCeiling.ts';
import { beadSeatsMatch, widthOnRim } from '../../mechanics/tyres/tyreFit.ts';
import { widthTables } from '../../standards/tyres/tyreWidths.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';

const encyclopaedia = { source: 'encyclopaedia article on ISO 5775', known: 'seen' } as const;
const straightWalls = {
  source:
    'extract of BS ISO 5775-2:2015 and pages of tyre makers on straight side rims; the refusal is our own',
  known: 'proposal',
} as const;

/** What the editions at hand say about a width; where none allows it, the rim maker's own figure decides. */
function byWidth(rim: Face, rimMm: number, tyreMm: number): Judgement {
  const verdicts = widthTables.map((table) => ({
    ...widthOnRim(table, tyreMm, rimMm),
    source: table.source,
  }));
  const words = `A ${mmText(tyreMm)} tyre on a rim ${mmText(rimMm)} wide inside`;
  const inTable = verdicts.filter(({ answer }) => answer !== 'not-in-this-table');
  const editions = inTable
    .map(
      ({ answer, edition }) => `${answer === 'inside' ? 'allowed' : 'not allowed'} by the table ${edition}`,
    )
    .join(', ');
  const source = inTable.map((verdict) => verdict.source).join('; ') || encyclopaedia.source;
  if (inTable.length > 0 && inTable.every(({ answer }) => answer === 'outside'))
    return {
      ...unknown(`${words}: ${editions}; only the rim maker's own figure can allow it.`, [
        askFor(rim, 'innerWidthMm'),
      ]),
      source,
      known: 'seen',
    };
  const wide = verdicts.some(({ wideForRim }) => wideForRim);
  return {
    meets: 'yes',
    because: inTable.length > 0 ? `${words}: ${editions}.` : `${words} is in none of our tables.`,
    notes: wide ? ['Wider than twice the rim: at low pressure it squirms and comes off the rim sooner.'] : [],
    source,
    known: 'seen',
  };
}

function tyreOnRim(rim: Face, tyre: Face): Judgement {
  const [rimSeat, tyreSeat] = [readingOf(rim, 'beadSeatMm'), readingOf(tyre, 'beadSeatMm')];
  if (!rimSeat || !tyreSeat)
    return unknown('The bead seat diameter of tyre or rim is not known yet.', [
      ...(rimSeat ? [] : [askFor(rim, 'beadSeatMm')]),
      ...(tyreSeat ? [] : [askFor(tyre, 'beadSeatMm')]),
    ]);
  if (!beadSeatsMatch(tyreSeat.mid, rimSeat.mid).ok)
    return {
      meets: 'no',
      because: `The tyre is for a rim of ${tyreSeat.mid}, this rim is ${rimSeat.mid}: they must be equal, whatever the inches say.`,
      ...encyclopaedia,
    };
  const straight = traitOf(rim, 'bead') === 'straight';
  if (straight && traitOf(tyre, 'tubeless') === 'no')
    return {
      meets: 'no',
      because: 'A rim with straight walls holds only a tyre that is marked for it.',
      ...straightWalls,
    };
  const [rimWidth, tyreWidth] = [readingOf(rim, 'innerWidthMm'), readingOf(tyre, 'widthMm')];
  if (!rimWidth || !tyreWidth)
    return unknown(
      `Tyre and rim are both ${rimSeat.mid}; whether their widths go together is not known yet.`,
      [...(rimWidth ? [] : [askFor(rim, 'innerWidthMm')]), ...(tyreWidth ? [] : [askFor(tyre, 'widthMm')])],
    );
  if (straight && straightSideWidthBreaks(tyreWidth.mid, rimWidth.mid).length > 0)
    return {
      meets: 'no',
      because: `A ${mmText(tyreWidth.mid)} tyre is too narrow for straight rim walls ${mmText(rimWidth.mid)} apart.`,
      ...straightWalls,
    };
  // The table counts whole millimetres; a caliper between two rows belongs to the nearer one.
  return byWidth(rim, Math.round(rimWidth.mid), Math.round(tyreWidth.mid));
}

/** Tyre and rim: one bead seat, and a width some edition of the table allows. */
export const tyreRule: Rule = {
  topic: 'tyre-on-rim',
  first: 'rim-seat',
  second: 'tyre-bead',
  risk: 'A tyre of nearly the right size can come off the rim.',
  ...encyclopaedia,
  judge: tyreOnRim,
};
