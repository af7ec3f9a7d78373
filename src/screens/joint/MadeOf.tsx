import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { JointRow, PartRow } from '../../journal/rows.ts';
import { fitText } from '../../practice/joint/measuredFit.ts';
import { threads } from '../../standards/screws/threads.ts';
import { betweenNames } from '../../words/betweenNames.ts';
import { partLine } from '../../words/partLine.ts';
import { hrefOf } from '../route.ts';

const threadText = (thread: string) => threads.find(({ id }) => id === thread)?.label ?? thread;

/** What the joint is made of: the parts, what lies between them, the screws. */
export function MadeOf({ joint, parts }: { joint: JointRow; parts: PartRow[] }) {
  const { partIds, between, fasteners, note } = joint;
  const partOf = (id: string | undefined) => parts.find(({ partId }) => partId === id);
  return (
    <>
      <Ruler label="Parts" />
      {partIds.map((partId) => {
        const part = partOf(partId);
        return (
          <ListRow
            key={partId}
            icon="part"
            title={part?.name ?? 'A part that is gone'}
            detail={part && partLine(part)}
            href={part && hrefOf({ at: 'part', partId })}
          />
        );
      })}
      {between.map(({ kind, partId, words }) => {
        const part = partOf(partId);
        return (
          <ListRow
            key={`${kind} ${partId ?? ''}`}
            icon={part ? 'shim' : 'drop'}
            title={part?.name ?? (kind === 'other' && words ? words : betweenNames[kind])}
            detail={part ? `${betweenNames[kind]} between` : 'Between'}
            href={part && hrefOf({ at: 'part', partId: part.partId })}
          />
        );
      })}
      {fasteners.map(({ thread, count, hand, words }, at) => (
        <ListRow
          key={at}
          icon="bolt"
          title={`${count} × ${thread ? threadText(thread) : 'thread not recorded'}`}
          detail={[words, hand === 'left' ? 'left-hand thread, tightens anti-clockwise' : 'right-hand thread']
            .filter(Boolean)
            .join(', ')}
        />
      ))}
      {fitText(joint) && <p>{`Fit, measured: ${fitText(joint)}.`}</p>}
      {note && <p class="as-typed">{note}</p>}
    </>
  );
}
