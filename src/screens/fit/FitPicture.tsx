import { useState } from 'preact/hooks';
import { BikePicture, zoneLabel } from '../../controls/figures/BikePicture.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { figuresOf } from '../../drawing/bike/figuresOf.ts';
import type { BikeZone } from '../../drawing/bike/shape.ts';
import type { PilePart } from '../../fit/pile.ts';
import { fitMarks, zonesOfFinding } from '../../practice/zones/fitMarks.ts';
import { Findings, type FindingsProps } from './Findings.tsx';

export interface FitPictureProps extends FindingsProps {
  /** Parts on the bike: it is drawn from these. */
  onBike: readonly PilePart[];
}

/** The bike with the worst finding of each zone; a zone opens its own findings. */
export function FitPicture({ onBike, ...found }: FitPictureProps) {
  const { groups, parts, onOpen } = found;
  const [zone, setZone] = useState<BikeZone>();
  const accepted = groups.find(({ group }) => group === 'accepted')?.findings ?? [];
  const ids = new Set(accepted.map(({ findingId }) => findingId));
  const there = groups
    .map(({ group, findings }) => ({
      group,
      findings: findings.filter((finding) => zone && zonesOfFinding(finding, parts).has(zone)),
    }))
    .filter(({ findings }) => findings.length > 0);
  return (
    <>
      <BikePicture
        figures={figuresOf(onBike)}
        marks={fitMarks(
          groups.flatMap(({ findings }) => findings),
          parts,
          ids,
        )}
        label="What fits where"
        markedOnly
        onZone={setZone}
      />
      {zone && (
        <Sheet open title={zoneLabel[zone]} onClose={() => setZone(undefined)}>
          <Findings
            {...found}
            groups={there}
            onOpen={(finding) => {
              setZone(undefined);
              onOpen(finding);
            }}
          />
        </Sheet>
      )}
    </>
  );
}
