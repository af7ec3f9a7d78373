import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Finding } from '../../fit/finding.ts';
import { isAccepted } from '../../fit/openFindings.ts';
import type { PilePart } from '../../fit/pile.ts';
import { alreadyBetween } from '../../fit/topicJoints.ts';
import type { FindingRow } from '../../journal/rows.ts';
import { acceptCommands, type Situation } from '../../practice/pile/acceptCommands.ts';
import { nearMisses } from '../../practice/pile/nearMisses.ts';
import { tableKnownWords, topicWords } from '../../words/fitWords.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun } from '../door.tsx';
import { go, hrefOf } from '../route.ts';
import { WheelLine } from '../wheel/WheelLine.tsx';
import { Asks } from './Asks.tsx';
import { Bridges } from './Bridges.tsx';
import { FaceFacts } from './FaceFacts.tsx';

export interface FindingSheetProps {
  finding: Finding;
  parts: readonly PilePart[];
  row: FindingRow | undefined;
  situation: Situation;
  onClose: () => void;
}

/** Pieces that were not offered, each with its reason; nothing where none comes near. */
function WhyNotOthers({ finding, parts }: Pick<FindingSheetProps, 'finding' | 'parts'>) {
  const misses = nearMisses(finding, parts);
  if (misses.length === 0) return null;
  return (
    <Fold label="Why not a different adapter?" end={misses.length}>
      {misses.map(({ adapterId, label, sentence }) => (
        <ListRow key={adapterId} title={sentenceCase(label)} detail={sentence} />
      ))}
    </Fold>
  );
}

/**
 * A fix that comes apart again may be chosen beforehand; a permanent change is only ever chosen by the
 * mechanic.
 */
const offeredFirst = ({ bridges: [best] }: Finding): string | undefined =>
  best?.reversible ? best.bridgeId : undefined;

/** One finding in full: the faces and their sizes, the rule behind it, and what can be done. */
export function FindingSheet({ finding, parts, row, situation, onClose }: FindingSheetProps) {
  const { run, save } = useRun();
  const [chosen, setChosen] = useState(() => offeredFirst(finding));
  const { findingId, topic, outcome, because, bridges, notes } = finding;
  const { bikeId } = situation;
  const title = topicWords(topic);
  const accepted = row !== undefined && isAccepted([row], finding);
  const between = alreadyBetween(finding, parts, situation.joints);
  const betweenNames = between?.partIds.map((id) => parts.find(({ partId }) => partId === id)?.name ?? '');
  const oneWay = bridges.find(({ bridgeId }) => bridgeId === chosen)?.oneWay;

  const accept = async () => {
    if (chosen === undefined || save.is === 'saving') return;
    const plan = acceptCommands(finding, chosen, situation);
    if (!plan.ok) return;
    const undo = oneWay ? `${title}: change planned` : `${title} accepted`;
    if (!(await run(plan.commands, { undo }))) return;
    if (plan.changeOf) go({ at: 'change-part', partId: plan.changeOf, ...plan.step });
    else onClose();
  };
  const acceptAsBuilt = async () => {
    const words = `${title}: ${betweenNames?.join(', ') || 'bridged'}, in ${between?.joint.name}`;
    const command = { type: 'accept-finding', bikeId, findingId, words } as const;
    if (await run(command, { undo: `${title} accepted` })) onClose();
  };
  const note = async () => {
    if (outcome !== 'not-known' && outcome !== 'does-not-fit' && outcome !== 'one-way-only') return;
    const words = `${title}: ${because}`;
    const command = { type: 'note-finding', bikeId, findingId, words, outcome } as const;
    if (await run(command, { undo: `${title} noted` })) onClose();
  };
  const notable = !accepted && !row && outcome !== 'fits' && outcome !== 'fits-with';
  const busy = save.is === 'saving';

  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <>
          {between && !accepted && (
            <Button kind="main" icon="check" onPress={acceptAsBuilt} disabled={busy}>
              Accept as built
            </Button>
          )}
          {bridges.length > 0 && !accepted && (
            <Button
              kind={between ? 'plain' : 'main'}
              icon={oneWay ? 'file' : 'shim'}
              onPress={accept}
              disabled={busy || chosen === undefined}
              under={
                chosen === undefined
                  ? 'Choose one above'
                  : oneWay
                    ? 'Adds a step, then asks you to sign'
                    : 'Adds parts, joint and steps'
              }
            >
              {chosen === undefined || oneWay ? 'Plan the change' : 'Accept this way'}
            </Button>
          )}
          {notable && (
            <Button icon="note" onPress={note} disabled={busy} under="The release will name it">
              Leave unresolved
            </Button>
          )}
        </>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <p class="fit-said">{sentenceCase(because)}</p>
        {row && (
          <Notice kind="note" title={accepted ? 'Accepted' : 'Noted as open'}>
            {row.words}
          </Notice>
        )}
        {between && !accepted && (
          <ListRow
            icon="bolt"
            title={`In ${between.joint.name} already`}
            detail={betweenNames?.filter(Boolean).join(', ')}
            href={hrefOf({ at: 'joint', jointId: between.joint.jointId })}
          />
        )}
        {bridges.length > 0 && !accepted && (
          <Bridges bridges={bridges} chosen={chosen} onChoose={setChosen} />
        )}
        {topic === 'spokes-hub-rim' && outcome === 'fits' && (
          <WheelLine bikeId={bikeId} partIds={finding.faces.map(({ partId }) => partId)} />
        )}
        <FaceFacts finding={finding} parts={parts} />
        <Asks finding={finding} parts={parts} bikeId={bikeId} />
        {notes.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {finding.risk && outcome !== 'fits' && (
          <Notice kind="caution" title="What can go wrong">
            {finding.risk}
          </Notice>
        )}
        {outcome !== 'fits' && outcome !== 'not-known' && <WhyNotOthers finding={finding} parts={parts} />}
        <p class="small">
          {finding.source}; {tableKnownWords[finding.known]}.
        </p>
      </div>
    </Sheet>
  );
}
