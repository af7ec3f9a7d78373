import { Ruler } from '../../controls/figures/Ruler.tsx';
import type { JointKind } from '../../standards/jointKinds.ts';
import { jointWork, metAgainWords } from '../../standards/jointWork.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';

/** How a joint of this kind is checked after a ride, and what counts as well. */
export function JointCheck({ kind }: { kind: JointKind }) {
  const { metAgain, again, countsToo } = jointWork[kind];
  return (
    <>
      <Ruler label="At a re-check" />
      <p>
        {`${sentenceCase(metAgainWords[metAgain])}. ${again ?? ''}`}
        {countsToo && ` Counts as well: ${countsToo.charAt(0).toLowerCase()}${countsToo.slice(1)}.`}
      </p>
    </>
  );
}
