import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { handOverFiles, writeHandOver } from '../../../exchange/handOver.ts';
import type { GoesAlong } from '../../../exchange/tables/leavingOut.ts';
import type { Id } from '../../../journal/entries.ts';
import { reasonOf } from '../../../words/reasonOf.ts';
import { useLogbook, useView } from '../../door.tsx';
import { handOverContent } from './handOverContent.ts';
import { canShare, download, newFile, share } from './keepFile.ts';

type Made =
  | { is: 'nothing' }
  | { is: 'running' }
  | { is: 'saved'; sheet: File }
  | { is: 'failed'; why: string };

const boxes: [keyof GoesAlong, string, string][] = [
  ['prices', 'Prices', 'Sums of money in notes'],
  ['serials', 'Serial numbers', 'Of frame and parts'],
  ['places', 'Places', 'Sellers, boxes, other bikes'],
];

/** The files of one bike for its next owner: what goes along is chosen first. */
export function HandOverBike() {
  const logbook = useLogbook();
  const bikes = useView('bikes');
  const [bikeId, setBikeId] = useState<Id>();
  const [along, setAlong] = useState<GoesAlong>({ prices: false, serials: true, places: false });
  const [made, setMade] = useState<Made>({ is: 'nothing' });
  if (bikes.is !== 'there' || bikes.value.length === 0) return null;
  const save = async (of: Id) => {
    setMade({ is: 'running' });
    try {
      const content = await handOverContent(logbook, of);
      const files = handOverFiles(content, along);
      const [page = ''] = Object.keys(files).filter((name) => name.endsWith('.html'));
      const zip = await newFile(page.replace('.html', '.zip'), 'application/zip');
      if (!zip) return setMade({ is: 'nothing' });
      await writeHandOver(files, zip.stream, logbook.now());
      const whole = zip.finish();
      if (whole) download(whole);
      setMade({ is: 'saved', sheet: new File([files[page] ?? ''], page, { type: 'text/html' }) });
    } catch (thrown) {
      setMade({ is: 'failed', why: reasonOf(thrown) });
    }
  };
  const sheet = made.is === 'saved' ? made.sheet : undefined;
  return (
    <>
      <SelectField
        label="Hand over a bike"
        hint="Build sheet, parts, joints and history as files to read."
        options={bikes.value.map((bike) => ({ value: bike.bikeId, label: bike.name }))}
        value={bikeId}
        onChoose={(chosen) => {
          setBikeId(chosen);
          setMade({ is: 'nothing' });
        }}
      />
      {bikeId !== undefined && (
        <>
          {boxes.map(([what, label, hint]) => (
            <Toggle
              key={what}
              {...{ label, hint, on: along[what] }}
              onToggle={(on) => {
                setAlong({ ...along, [what]: on });
                setMade({ is: 'nothing' });
              }}
            />
          ))}
          <Button wide icon="save" disabled={made.is === 'running'} onPress={() => void save(bikeId)}>
            Save the files of this bike
          </Button>
        </>
      )}
      {sheet && (
        <Notice
          kind="note"
          title="Saved"
          action={
            canShare(sheet) && (
              <Button icon="share" onPress={() => void share(sheet)}>
                Share the build sheet
              </Button>
            )
          }
        >
          Read the files before you pass them on: names in notes stay as typed.
        </Notice>
      )}
      {made.is === 'failed' && (
        <Notice kind="error" title="The files were not saved">
          {`${made.why} Try again, or choose another place.`}
        </Notice>
      )}
    </>
  );
}
