import './settings.css';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { AboutSection } from './AboutSection.tsx';
import { CopySection } from './copies/CopySection.tsx';
import { DemoSection } from './DemoSection.tsx';
import { DoerSection } from './DoerSection.tsx';
import { LookSection } from './LookSection.tsx';
import { PhoneSection } from './PhoneSection.tsx';
import { RemindersSection } from './RemindersSection.tsx';
import { SizeSection } from './SizeSection.tsx';
import { SpansSection } from './SpansSection.tsx';
import { type ChangeProps, UnitsSection } from './UnitsSection.tsx';

// Where the store does not open, the check saves the second copy with the same script.
export { ofSecondCopy } from '../../exchange/copy/ofSecondCopy.ts';
// Beside the screens it is loaded only where a folder was chosen.
export { refreshFolder } from './copies/folder.ts';
export { saveArchive } from './copies/saveArchive.ts';

/** What is set once for every bike, and what this phone can do. */
export function SettingsPage() {
  const seen = useView('settings');
  const { run, save } = useRun();
  const settings = seen.is === 'there' ? seen.value : undefined;
  const change: ChangeProps['change'] = (changed) => void run({ type: 'change-settings', change: changed });
  return (
    <Screen title="Settings" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      {seen.is === 'failed' && (
        <Notice
          kind="error"
          title="The settings could not be read"
          action={<Button href={hrefOf({ at: 'check' })}>Check the logbook</Button>}
        >
          Reload the page. If that does not help, check the logbook.
        </Notice>
      )}
      <SaveNotice save={save} />
      {settings && (
        <div class="stack">
          <DoerSection settings={settings} change={change} />
          <UnitsSection settings={settings} change={change} />
          <LookSection settings={settings} change={change} />
          <SpansSection settings={settings} change={change} />
          <RemindersSection settings={settings} change={change} />
          <PhoneSection />
          <SizeSection />
          <CopySection />
          <DemoSection />
          <AboutSection />
        </div>
      )}
    </Screen>
  );
}
