import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { numberText } from '../../../mechanics/numberText.ts';
import type { ForceUnit } from '../../../mechanics/units.ts';
import { convert, unitLabel } from '../../../mechanics/units.ts';
import type { WheelByEar } from '../../../practice/wheel/wheelEar.ts';
import { bandSentence, soundsDetails, spokenReading } from '../../../words/wheel/earWords.ts';
import { ListenToSpoke } from './ListenToSpoke.tsx';

export interface EarPartProps {
  byEar: WheelByEar;
  /** of the spoke in the layout */
  place: number;
  spoke: number;
  /** number of the one that follows */
  next: number | undefined;
  unit: ForceUnit;
  /** pitch that stands on the screen */
  hz: number | undefined;
  onHeard: (hz: number) => void;
}

/** The spoke's pitch by ear: what is listened for, and how far the tension may be off. */
export function EarPart({ byEar, place, spoke, next, unit, hz, onHeard }: EarPartProps) {
  // Halved and doubled from what the side shall have: a wheel begins slack.
  const [doublings, setDoublings] = useState(0);
  const expectedN = byEar.expectedN(place) * 2 ** doublings;
  const inUnit = (newtons: number) => numberText(convert(newtons, 'N', unit), 0);
  const answer = hz === undefined ? undefined : byEar.read(place, hz);
  return (
    <div class="stack lower">
      <ListenToSpoke
        place={place}
        window={byEar.window(place, expectedN)}
        opening={`Spoke ${spoke}.`}
        onRead={(heardHz) => {
          onHeard(heardHz);
          const read = byEar.read(place, heardHz);
          if (!read.ok) return undefined;
          return { sentence: spokenReading(spoke, inUnit(read.tensionN), next), tone: 'heard' };
        }}
      />
      <p class="buttons">
        <Button icon="down" disabled={doublings <= -3} onPress={() => setDoublings(doublings - 1)}>
          Lower
        </Button>
        <Button icon="up" disabled={doublings >= 1} onPress={() => setDoublings(doublings + 1)}>
          Higher
        </Button>
      </p>
      <p class="small">
        {`Listens for about ${inUnit(expectedN)} ${unitLabel[unit]}. ${soundsDetails[byEar.ear.sounds]}`}
      </p>
      {answer?.ok && <p class="small">{bandSentence(answer.band, answer.calibrated)}</p>}
    </div>
  );
}
