import './outline.css';
import { useState } from 'preact/hooks';
import { BikePicture, zoneLabel } from '../../controls/figures/BikePicture.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { figuresOf } from '../../drawing/bike/figuresOf.ts';
import type { BikeZone } from '../../drawing/bike/shape.ts';
import { pileOf } from '../../fit/pileOf.ts';
import type { JointRow, PartRow } from '../../journal/rows.ts';
import { jointMarks, jointsByZone, notTight, partsByZone } from '../../practice/zones/jointMarks.ts';
import { partLine } from '../../words/partLine.ts';
import { JointLine } from '../joint/JointLine.tsx';
import { hrefOf } from '../route.ts';

export interface OutlineProps {
  name: string;
  parts: PartRow[];
  joints: JointRow[];
}

/** The bike drawn from its own figures; each zone shows how many joints are not tight and opens what is there. */
export function Outline({ name, parts, joints }: OutlineProps) {
  const [zone, setZone] = useState<BikeZone>();
  const there = zone && jointsByZone(joints, parts).get(zone);
  const of = zone && partsByZone(parts).get(zone);
  return (
    <>
      <BikePicture
        figures={figuresOf(pileOf(parts))}
        marks={jointMarks(joints, parts)}
        label={`Joints of ${name}`}
        onZone={setZone}
      />
      {zone && (
        <Sheet open title={zoneLabel[zone]} onClose={() => setZone(undefined)}>
          {there?.map((joint) => (
            <JointLine key={joint.jointId} joint={joint} />
          ))}
          {of?.map((part) => (
            <ListRow
              key={part.partId}
              icon="part"
              title={part.name}
              detail={partLine(part)}
              href={hrefOf({ at: 'part', partId: part.partId })}
            />
          ))}
          {!there && !of && <p>No parts or joints here yet.</p>}
        </Sheet>
      )}
    </>
  );
}

/** How many joints are not tight, readable from afar. */
export function JointCount({ joints }: { joints: JointRow[] }) {
  const open = joints.filter(notTight).length;
  const of = joints.filter(({ state }) => state !== 'apart').length;
  if (of === 0) return null;
  return (
    <p class="outline-count">
      <span class="caption">{open === 0 ? 'All joints done' : 'Joints still open'}</span>
      <strong>{open === 0 ? of : open}</strong>
      {open > 0 && <span>of {of}</span>}
    </p>
  );
}
