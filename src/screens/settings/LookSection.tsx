import { Choice } from '../../controls/fields/Choice.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import type { Settings } from '../../journal/entries.ts';
import type { ChangeProps } from './UnitsSection.tsx';

const options = [
  { value: 'as-the-phone', label: 'As the phone', icon: 'phone' },
  { value: 'light', label: 'Light', icon: 'sun', hint: 'For the sun outside' },
  { value: 'dark', label: 'Dark', icon: 'moon', hint: 'For the workshop at night' },
] as const;

/** Dresses the page at once; the stored choice does the same at the next start. */
function dress(theme: Settings['theme']): void {
  if (theme === 'as-the-phone') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}

/** Paper or slate. */
export function LookSection({ settings, change }: ChangeProps) {
  return (
    <>
      <Ruler label="Light or dark" />
      <Choice
        label="Theme"
        options={options}
        value={settings.theme}
        onChoose={(theme) => {
          dress(theme);
          change({ theme });
        }}
      />
    </>
  );
}
