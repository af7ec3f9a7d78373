import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { type Abilities, abilityLines, readAbilities, reminderAbilities } from '../../sensing/platform.ts';
import { AbilityRows } from './AbilityRows.tsx';
import { PhoneNameForm } from './PhoneNameForm.tsx';

/** What this phone does for the logbook and what it does not, each in a sentence, and what can be asked of it. */
export function PhoneSection() {
  const [can, setCan] = useState<Abilities>();
  const [refused, setRefused] = useState<string>();
  const look = () => readAbilities().then(setCan);
  useEffect(() => {
    void look();
  }, []);
  if (!can) return null;
  const askKeep = async () => {
    const kept = await navigator.storage.persist();
    setRefused(kept ? undefined : 'Not granted. Add to the home screen and try again.');
    await look();
  };
  return (
    <>
      <Ruler label="This phone" />
      <PhoneNameForm />
      <AbilityRows lines={abilityLines(can).filter(({ name }) => !reminderAbilities.has(name))} />
      {refused && <Notice kind="error" title={refused} />}
      <div class="buttons">
        {can.persisted === false && (
          <Button icon="lock" onPress={askKeep}>
            Keep my data
          </Button>
        )}
      </div>
    </>
  );
}
