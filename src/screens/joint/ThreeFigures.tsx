import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Target, ToolSnapshot } from '../../journal/entries.ts';
import type { Applied, Found, JointRow, PartRow } from '../../journal/rows.ts';
import { type TorqueUnit, unitLabel } from '../../mechanics/units.ts';
import { type RulingTarget, rulingTarget } from '../../planning/rulingTarget.ts';
import { countedAs } from '../../standards/jointKinds.ts';
import { betweenNames } from '../../words/betweenNames.ts';
import { dayText, whenText } from '../../words/dayText.ts';
import { toolWords } from '../../words/history/tradeWords.ts';
import { countWords } from '../../words/phrases.ts';
import { quantityText } from '../../words/quantityText.ts';
import { sourceText, standingWarning, targetFigureText } from '../../words/targetWords.ts';
import { TorqueRule } from './TorqueRule.tsx';

const ruleWords = { 'part-maker': 'Used: lowest maker’s figure' } as const;

function TargetLines({
  targets,
  ruling,
  parts,
}: {
  targets: Target[];
  ruling: RulingTarget;
  parts: PartRow[];
}) {
  const nameOf = (id: string | undefined) => parts.find(({ partId }) => partId === id)?.name;
  if (!ruling.ok) {
    return (
      <ListRow
        title="No target"
        detail={targets.length > 0 ? 'Looked for, none found' : 'None logged yet'}
        state="open"
        stateWord="No target torque"
      />
    );
  }
  const warning = standingWarning[ruling.standing];
  return (
    <>
      {[ruling.target, ...ruling.overruled].map((target, at) => (
        <ListRow
          key={at}
          title={`${targetFigureText(target)} ${unitLabel[target.torque.unit]}`}
          detail={sourceText(target, nameOf(target.partId))}
          state={at === 0 ? 'noted' : undefined}
          stateWord={ruling.standing === 'part-maker' ? ruleWords['part-maker'] : 'Used: no maker’s figure'}
        />
      ))}
      {warning && <Notice kind="caution" title={warning} />}
    </>
  );
}

function toolText(tool: ToolSnapshot | undefined): string {
  return tool ? toolWords(tool) : 'tool not named';
}

/** When, how and with what a torque was applied. */
export function appliedText({ atMs, bolts, passes, tool, marked, between }: Applied, noun: string): string {
  return [
    whenText(atMs),
    `${countWords(bolts, noun)} in ${passes} ${passes === 1 ? 'pass' : 'passes'}`,
    toolText(tool),
    between && betweenNames[between].toLowerCase(),
    marked && 'paint mark added',
  ]
    .filter(Boolean)
    .join(', ');
}

/** What a re-check met, in a word or two. */
export function foundWord({ outcome, movedAt, turnedDeg }: Found): string {
  if (outcome === 'held') return 'Held';
  const at = movedAt ? ` at ${quantityText(movedAt)}` : '';
  const by = turnedDeg === undefined ? '' : `, ${turnedDeg}° before it was tight`;
  return `${outcome === 'moved' ? 'Moved' : 'Turned'}${at}${by}`;
}

/** Target, applied, found: three figures beside each other, none ever copied from another. */
export function ThreeFigures({
  joint,
  parts,
  unit,
}: {
  joint: JointRow;
  parts: PartRow[];
  unit: TorqueUnit;
}) {
  const { targets, applied, found, appliedTimes, moved } = joint;
  return (
    <>
      <TorqueRule joint={joint} unit={unit} />
      <Ruler label="Target" end={targets.length > 1 && <b>{targets.length}</b>} />
      <TargetLines targets={targets} ruling={rulingTarget(targets)} parts={parts} />
      <Ruler label="Applied" end={appliedTimes > 1 && <b>{`${appliedTimes} times`}</b>} />
      {applied ? (
        <ListRow
          title={quantityText(applied.applied, unit)}
          detail={appliedText(applied, countedAs(joint.kind))}
        />
      ) : (
        <p class="lower">Nothing logged yet.</p>
      )}
      <Ruler label="Found" end={moved > 0 && <b>{moved === 1 ? 'moved once' : `moved ${moved} times`}</b>} />
      {found ? (
        <ListRow
          title={dayText(found.atMs)}
          detail={found.way === 'mark' ? 'By the paint mark' : 'Torque check'}
          state={found.outcome === 'held' ? 'done' : 'held'}
          stateWord={foundWord(found)}
        />
      ) : (
        <p class="lower">No re-check yet.</p>
      )}
      {moved >= 2 && (
        <Notice kind="caution" title={`It moved at ${moved} re-checks`}>
          More torque will not fix a joint that keeps moving. Take it apart: check faces, threads, fit and
          lubricant.
        </Notice>
      )}
    </>
  );
}
