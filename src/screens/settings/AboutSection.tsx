import { useEffect, useState } from 'preact/hooks';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { type CautionTopic, cautions } from '../../standards/checks/releaseRules.ts';
import { dayText } from '../../words/dayText.ts';
import { newestShipped, type Shipped } from './shipped.ts';

const licences: readonly [what: string, licence: string][] = [
  ['Pinchbolt', 'MIT'],
  ['preact', 'MIT'],
  ['idb', 'ISC'],
  ['date-fns', 'MIT'],
  ['fflate', 'MIT'],
  ['uuid', 'MIT'],
  ['workbox-window', 'MIT'],
  ['Atkinson Hyperlegible Next, the typeface', 'SIL Open Font License 1.1'],
];

const topics: Record<CautionTopic, string> = {
  release: 'Release',
  brakes: 'Brakes',
  steering: 'Steering',
  carbon: 'Carbon',
  'one-way-change': 'Permanent change',
  tyre: 'Tyre',
  'somebody-else': 'Another person',
};

/** Which files run here, under which licences, and what to keep in mind. */
export function AboutSection() {
  const [shipped, setShipped] = useState<Shipped>();
  useEffect(() => {
    newestShipped().then(setShipped, () => undefined);
  }, []);
  return (
    <>
      <Fold label="Cautions" end={Object.keys(topics).length} open>
        <div class="settings-demo stack">
          {Object.entries(topics).map(([topic, name]) => (
            <Notice key={topic} kind="caution" title={name}>
              {cautions[topic as CautionTopic]}
            </Notice>
          ))}
        </div>
      </Fold>
      <Fold label="Version and licences">
        <p class="lower">
          {shipped
            ? `Version ${shipped.version}, on this phone since ${dayText(shipped.sinceMs)}.`
            : 'Not stored on this phone yet: it loads from the network each time.'}
        </p>
        <ul class="settings-licences">
          {licences.map(([what, licence]) => (
            <li key={what}>{`${what}: ${licence}`}</li>
          ))}
        </ul>
        <p class="small">
          Provided as is, without warranty of any kind. Figures of the tables carry their source where they
          are shown.
        </p>
      </Fold>
    </>
  );
}
