import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Facts } from '../../../controls/lists/Facts.tsx';
import { contradictionFindings } from '../../../fit/contradictions.ts';
import type { PartKind } from '../../../fit/partKinds.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { faceKinds } from '../../../standards/faces/faceKinds.ts';
import { faceKnown } from '../../../words/faceText.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';

/** The faces as they are known, and where one says two things that cannot both be true. */
export function FacesSeen({ part }: { part: PartRow }) {
  const { faces = [], partId, kind, name } = part;
  if (faces.length === 0) return null;
  const doubts = contradictionFindings([{ partId, kind: kind as PartKind, name, faces }]);
  return (
    <section>
      <Ruler label="Sizes" end={faces.length} />
      <Facts of={faces.map((face) => [sentenceCase(faceKinds[face.kind].label), faceKnown(face)])} />
      {doubts.map((doubt) => (
        <Notice key={doubt.findingId} kind="caution" title={doubt.because}>
          {doubt.asks.map(({ how }) => how).join(' ')}
        </Notice>
      ))}
    </section>
  );
}
