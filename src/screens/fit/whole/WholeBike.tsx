import type { ComponentChildren } from 'preact';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { PileCheck } from '../../../fit/checkPile.ts';
import type { Finding } from '../../../fit/finding.ts';
import type { PilePart } from '../../../fit/pile.ts';
import { chainlineOf } from '../../../fit/wholes/chainlineFinding.ts';
import { endsWithoutCaliper, missingParts } from '../../../practice/pile/missingParts.ts';
import { partNames } from '../../../words/fitWords.ts';
import { hrefOf } from '../../route.ts';
import { ChainlinePicture } from './ChainlinePicture.tsx';
import { Gearing } from './Gearing.tsx';
import { Slot } from './Slot.tsx';

export interface WholeBikeProps {
  bikeId: string;
  /** Parts on the bike alone: what lies on the shelf turns no wheel. */
  parts: readonly PilePart[];
  check: PileCheck;
  onOpen: (finding: Finding) => void;
}

function MissingParts({ bikeId, parts }: Pick<WholeBikeProps, 'bikeId' | 'parts'>) {
  const missing = missingParts(parts);
  const bare = endsWithoutCaliper(parts);
  return (
    <section>
      <Ruler label="Missing for a bike" end={missing.length} />
      {missing.length === 0 && <p class="lead">Nothing missing.</p>}
      {missing.map(({ slot, label, suits }) => (
        <ListRow
          key={slot}
          icon="plus"
          title={label}
          detail={suits.map((words) => (
            <span class="fit-fact" key={words}>
              {words}
            </span>
          ))}
          href={hrefOf({ at: 'new-part', place: `bike:${bikeId}` })}
        />
      ))}
      {bare.length > 0 && (
        <p class="lead">
          {`No disc caliper at the ${bare.join(' and the ')}. Rim and coaster brakes are not checked here: add them as parts and joints, and follow local rules on brakes.`}
        </p>
      )}
    </section>
  );
}

/** Two wheels have one pressure each; more comes of parts that are spare. */
const PLACES = 2;

interface OfTopicProps extends WholeBikeProps {
  label: string;
  topic: string;
  picture?: ComponentChildren;
}

function OfTopic({ label, topic, picture, check, parts, onOpen }: OfTopicProps) {
  const own = new Set(parts.map(({ partId }) => partId));
  const found = [...check.findings, ...check.toMeasure, ...check.fitting].filter(
    (finding) => finding.topic === topic && finding.faces.every(({ partId }) => own.has(partId)),
  );
  if (found.length === 0) return null;
  return (
    <section>
      <Ruler label={label} />
      {picture}
      {found.length > PLACES && (
        <p class="lead">Several parts for one place: what is spare belongs on the shelf.</p>
      )}
      {found.slice(0, PLACES).map((finding) => (
        <ListRow
          key={finding.findingId}
          title={finding.because}
          detail={partNames(finding, parts).join(' + ')}
          onPress={() => onOpen(finding)}
        />
      ))}
    </section>
  );
}

/** What follows from all parts together: what is missing, the gear, the slot, the chainline, the pressures. */
export function WholeBike(props: WholeBikeProps) {
  const { bikeId, parts } = props;
  const line = chainlineOf(parts);
  return (
    <div class="sections">
      <MissingParts bikeId={bikeId} parts={parts} />
      <Gearing parts={parts} />
      <Slot parts={parts} />
      <OfTopic
        label="Chainline"
        topic="chainline"
        picture={line && <ChainlinePicture line={line} />}
        {...props}
      />
      <OfTopic label="Pressure ceiling" topic="pressure-ceiling" {...props} />
    </div>
  );
}
