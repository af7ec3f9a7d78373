import { useEffect, useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { cautions } from '../../standards/releaseRules.ts';
import { dayText } from '../dayText.ts';
import { newestShipped, type Shipped } from './shipped.ts';

const licences: readonly [what: string, licence: string][] = [
  ['Pinchbolt', 'MIT'],
  ['preact', 'MIT'],
  ['idb', 'ISC'],
  ['date-fns', 'MIT'],
  ['uuid', 'MIT'],
  ['workbox-window', 'MIT'],
  ['Atkinson Hyperlegible Next, the typeface', 'SIL Open Font License 1.1'],
];

/** Which files run here, under which licences, and what to keep in mind. */
export function AboutSection() {
  const [shipped, setShipped] = useState<Shipped>();
  useEffect(() => {
    newestShipped().then(setShipped, () => undefined);
  }, []);
  return (
    <>
      <Fold label="Cautions" end={Object.keys(cautions).length} open>
        <div class="settings-demo stack">
          {Object.entries(cautions).map(([topic, words]) => (
            <Notice key={topic} kind="caution" title={titleOf(topic)}>
              {words}
            </Notice>
          ))}
        </div>
      </Fold>
      <Fold label="Version and licences">
        <p class="bike-none">
          {shipped
            ? `Version ${shipped.version}, on this phone since ${dayText(shipped.sinceMs)}.`
            : 'Not kept on this phone yet: it comes from the network each time.'}
        </p>
        <ul class="settings-licences">
          {licences.map(([what, licence]) => (
            <li key={what}>{`${what}: ${licence}`}</li>
          ))}
        </ul>
        <p class="small">
          Provided as it is, without warranty of any kind. Figures of the tables carry their source where they
          are shown.
        </p>
      </Fold>
    </>
  );
}

/** @example titleOf('one-way-change') //=> 'One way change' */
function titleOf(topic: string): string {
  const words = topic.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
