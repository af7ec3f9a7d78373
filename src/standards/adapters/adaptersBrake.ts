import type { AdapterRow } from './adapterRow.ts';

const mountArticles = 'two shop articles on brake mounts; Q&A on IS adapters';
const caution =
  'The maker’s largest rotor for the frame or fork still holds; washers only where the adapter’s sheet shows them.';

/**
 * An adapter lifts the caliper for a rotor bigger by one step. It knows nothing of front and rear: what it
 * asks for is the rotor the bare mount would take.
 */
const step = (from: 'is' | 'post', nativeMm: number, rotorMm: number): AdapterRow => ({
  id: `${from}-post-${nativeMm}-${rotorMm}`,
  label: `${from === 'is' ? 'IS' : 'post'} to post adapter, ${nativeMm} mount to ${rotorMm} rotor`,
  sort: 'adapter',
  faces: [
    { kind: 'caliper-mount', standard: from, nominal: { rotorMm: nativeMm } },
    { kind: 'disc-mount', standard: 'post', nominal: { nativeRotorMm: rotorMm } },
  ],
  reversible: true,
  caution,
  source: mountArticles,
  known: 'seen',
});

/** Brake and rotor adapters. They only ever enlarge the rotor. */
export const brakeAdapters: readonly AdapterRow[] = [
  step('is', 140, 140),
  step('is', 140, 160),
  step('is', 140, 180),
  step('is', 140, 183),
  step('is', 160, 160),
  step('is', 160, 180),
  step('is', 160, 200),
  step('is', 160, 203),
  step('post', 140, 160),
  step('post', 160, 180),
  step('post', 160, 200),
  step('post', 160, 203),
  step('post', 180, 200),
  step('post', 180, 203),
  {
    id: 'rotor-six-bolt-on-centre-lock',
    label: 'six-bolt rotor on a centre-lock hub',
    sort: 'adapter',
    faces: [
      { kind: 'rotor-mount', standard: 'centre-lock' },
      { kind: 'rotor-seat', standard: 'six-bolt' },
    ],
    reversible: true,
    caution: 'The rotor moves outward by the plate: check that the pads cover it.',
    source: 'rider’s page comparing rotor mounts',
    known: 'seen',
  },
];
