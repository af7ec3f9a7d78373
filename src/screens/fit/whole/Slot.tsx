import { useState } from 'preact/hooks';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Facts } from '../../../controls/lists/Facts.tsx';
import type { PilePart } from '../../../fit/pile.ts';
import { axlePositions } from '../../../fit/wholes/axlePosition.ts';
import { parseNumber } from '../../../mechanics/quantity.ts';
import { drivetrainOf } from '../../../practice/pile/drivetrain.ts';
import { cautions } from '../../../standards/checks/releaseRules.ts';
import { filingWords, moveWords, slotRefusals, stopWords } from '../../../words/slotWords.ts';
import { SlotPicture } from './SlotPicture.tsx';

/** A field left empty asks nothing; anything but a number is refused by the reckoning itself. */
const figureOf = (typed: string): number => {
  if (typed.trim() === '') return 0;
  const read = parseNumber(typed);
  return read.ok ? read.value : Number.NaN;
};

/** Where whole chains put the rear axle, what wear does to it, and what a file would win. */
export function Slot({ parts }: { parts: readonly PilePart[] }) {
  const [halfLink, setHalfLink] = useState(false);
  const [wear, setWear] = useState('0.75');
  const [file, setFile] = useState('');
  const { slot, ringTeeth, sprocketTeeth } = drivetrainOf(parts);
  const readingMm = slot?.readingMm ?? 0;
  if (!slot || ringTeeth === undefined || sprocketTeeth === undefined)
    return (
      <section>
        <Ruler label="Axle position in the dropout" />
        <p class="lead">
          Needs the front and rear axle positions of the frame, one chainring and one sprocket.
        </p>
      </section>
    );
  const wearPercent = figureOf(wear);
  const fileFrontMm = figureOf(file);
  const positions = axlePositions(slot, ringTeeth, sprocketTeeth, {
    halfLink,
    wearPercent,
    fileFrontMm,
    readingMm,
  });
  return (
    <section>
      <Ruler label="Axle position in the dropout" />
      {positions.ok ? (
        <>
          <SlotPicture positions={positions} />
          <Facts
            of={positions.stops.map((stop) => [
              `${stop.pitches} links${stop.kind === 'half-link' ? ', half-link' : ''}`,
              stopWords(stop, wearPercent).join('\n'),
            ])}
          />
          {positions.stops.length === 0 && <p class="lead">No whole chain puts the axle into this slot.</p>}
          {filingWords(positions, wearPercent).map((words) => (
            <p key={words} class="lead">
              {words}
            </p>
          ))}
          {moveWords(positions).length > 0 && (
            <p class="small lead">{`It moves the axle: ${moveWords(positions).join('; ')}.`}</p>
          )}
        </>
      ) : (
        <p class="field-error" role="alert">
          {slotRefusals[positions.reason]}
        </p>
      )}
      <Toggle
        label="Half-links too"
        hint="An odd number of links closes with one."
        on={halfLink}
        onToggle={setHalfLink}
      />
      <div class="fit-pair">
        <NumberField label="Chain wear, per cent" typed={wear} onTyped={setWear} />
        <NumberField label="File the front by" typed={file} unit="mm" onTyped={setFile} />
      </div>
      {fileFrontMm > 0 && <p class="small lead">{cautions['one-way-change']}</p>}
    </section>
  );
}
