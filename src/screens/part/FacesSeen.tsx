import { Notice } from '../../controls/Notice.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { faceKnown } from '../../exchange/faceText.ts';
import { contradictionFindings } from '../../fit/contradictions.ts';
import type { PartKind } from '../../fit/partKinds.ts';
import type { PartRow } from '../../journal/rows.ts';
import { faceKinds } from '../../standards/faceKinds.ts';
import { Facts } from './Facts.tsx';
import { sentenceCase } from './sentenceCase.ts';

/** The faces as they are known, and where one says two things that cannot both be true. */
export function FacesSeen({ part }: { part: PartRow }) {
  const { faces = [], partId, kind, name } = part;
  if (faces.length === 0) return null;
  const doubts = contradictionFindings([{ partId, kind: kind as PartKind, name, faces }]);
  return (
    <section>
      <Ruler label="Faces" end={faces.length} />
      <Facts of={faces.map((face) => [sentenceCase(faceKinds[face.kind].label), faceKnown(face)])} />
      {doubts.map((doubt) => (
        <Notice key={doubt.findingId} kind="caution" title={doubt.because}>
          {doubt.asks.map(({ how }) => how).join(' ')}
        </Notice>
      ))}
    </section>
  );
}
