import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { FolderKept } from '../../../exchange/copy/folderCopy.ts';
import { folderWords } from '../../../words/copyWords.ts';
import { reasonOf } from '../../../words/reasonOf.ts';
import { useLogbook } from '../../door.tsx';
import { useSafety } from '../../safety.tsx';
import { asksFirst, canChooseFolder, chooseFolder, keptFolder, leaveFolder, writeFolder } from './folder.ts';

/** A copy in a folder that the person chose. Where none can be chosen nothing is shown. */
export function FolderCopy() {
  const logbook = useLogbook();
  const safety = useSafety();
  const [kept, setKept] = useState<FolderKept & { asks?: boolean }>();
  const [doing, setDoing] = useState<{ running?: true; failed?: string }>({});
  useEffect(() => {
    const look = async () => {
      const found = await keptFolder(logbook);
      setKept(found && { ...found, asks: await asksFirst(found) });
    };
    if (canChooseFolder()) look().catch(() => {});
  }, [logbook]);
  if (!canChooseFolder()) return null;
  const attempt = async (work: () => Promise<void>) => {
    setDoing({ running: true });
    try {
      await work();
      setDoing({});
    } catch (thrown) {
      setDoing({ failed: reasonOf(thrown) });
    }
  };
  const write = async () => {
    const next = await writeFolder(logbook, await safety.safeguards(), true);
    if (!next) throw new Error('The browser was not allowed to write there.');
    setKept(next);
  };
  const update = () => attempt(write);
  const choose = () =>
    attempt(async () => {
      const chosen = await chooseFolder(logbook);
      if (!chosen) return;
      setKept(chosen);
      await write();
    });
  const leave = () =>
    attempt(async () => {
      await leaveFolder(logbook);
      setKept(undefined);
    });
  const { running, failed } = doing;
  return (
    <>
      {failed !== undefined && (
        <Notice kind="error" title="No copy was written to the folder">
          {`${failed} Try again, or choose another folder.`}
        </Notice>
      )}
      {kept && <ListRow icon="save" {...folderWords({ ...kept, name: kept.folder.name }, logbook.now())} />}
      {kept ? (
        <>
          <Button wide icon="save" disabled={running} onPress={() => void update()}>
            Update the copy in the folder
          </Button>
          <Button wide disabled={running} onPress={() => void leave()}>
            Stop copying to the folder
          </Button>
        </>
      ) : (
        <Button
          wide
          icon="open"
          under="Updated by itself after a build day, not locked"
          disabled={running}
          onPress={() => void choose()}
        >
          Keep a copy in a folder
        </Button>
      )}
    </>
  );
}
