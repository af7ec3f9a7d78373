import type { Known } from '../known.ts';
import { type AdapterRow, tube } from './adapterRow.ts';

const retro = 'forum of old bicycles quoting an encyclopaedia';
const memory = 'from memory';

const barShim = (outsideMm: number, insideMm: number, source: string, known: Known): AdapterRow =>
  tube(
    'shim',
    'bar shim',
    { kind: 'bar-clamp', key: 'boreMm' },
    { kind: 'bar-centre', key: 'diameterMm' },
    outsideMm,
    insideMm,
    {
      caution:
        'Full width of the clamp, slit in line with the slit of the stem; a bar that slips throws the rider.',
      source,
      known,
    },
  );

const post = (outsideMm: number, insideMm: number): AdapterRow =>
  tube(
    'shim',
    'seatpost shim',
    { kind: 'seat-tube', key: 'boreMm' },
    { kind: 'post', key: 'diameterMm' },
    outsideMm,
    insideMm,
    {
      caution:
        'The post needs its minimum insertion measured from the shim’s lower end upwards, not from its collar.',
      source: 'principle: encyclopaedia mirror, article on seat posts; sizes from memory',
      known: 'memory',
    },
  );

const axle = (outsideMm: number, insideMm: number, source: string, known: Known): AdapterRow =>
  tube(
    'sleeve',
    'axle bush',
    { kind: 'axle-slot', key: 'widthMm' },
    { kind: 'axle', key: 'diameterMm' },
    outsideMm,
    insideMm,
    {
      caution: 'The wheel can walk forward: knurled washers or a chain tug, both sides alike.',
      source,
      known,
    },
  );

const spindle = (outsideMm: number, insideMm: number): AdapterRow =>
  tube(
    'sleeve',
    'spindle sleeve',
    { kind: 'bb-bore', key: 'boreMm' },
    { kind: 'spindle', key: 'diameterMm' },
    outsideMm,
    insideMm,
    {
      caution: 'Hard and as long as the bearing is wide, or it creaks and wears.',
      source: memory,
      known: 'memory',
    },
  );

/** Adapters that are tubes: shims, sleeves, bushes. */
export const tubeAdapters: readonly AdapterRow[] = [
  tube(
    'shim',
    'steerer shim',
    { kind: 'steerer-clamp', key: 'boreMm' },
    { kind: 'steerer', key: 'diameterMm' },
    28.6,
    25.4,
    {
      caution:
        'As high as the clamp, slit in line with its slit; without a spacer above it needs a 1-1/8 in cap.',
      source: 'forum thread on stem shims',
      known: 'seen',
    },
  ),
  barShim(31.8, 25.4, retro, 'seen'),
  barShim(31.8, 26, retro, 'seen'),
  barShim(26, 25.4, 'bar and stem size article of a parts maker', 'seen'),
  barShim(25.4, 22.2, `${retro}: 22.2 inside; outside from memory`, 'memory'),
  barShim(35, 31.8, memory, 'memory'),
  post(27.2, 25.4),
  post(30.9, 27.2),
  post(31.6, 27.2),
  post(31.6, 30.9),
  post(34.9, 31.6),
  axle(14, 10, 'blog: a 14 mm slot frame run with a 10 mm hub', 'seen'),
  axle(14, 9.525, memory, 'memory'),
  spindle(22, 19),
  spindle(24, 22),
  spindle(24, 19),
  {
    ...spindle(30, 24),
    caution: 'Bushes in the 30 mm bearings; conversion cups are the firmer way.',
    source: "a bottom bracket vendor's spacer chart; workshop article on conversion sleeves",
    known: 'seen',
  },
  tube(
    'sleeve',
    'valve sleeve',
    { kind: 'valve-hole', key: 'diameterMm' },
    { kind: 'valve-stem', key: 'diameterMm' },
    8,
    6.4,
    {
      caution: 'Without it the thin valve tilts and its root tears.',
      source: 'need of a sleeve: valve hole pages cited with the valve table; sizes from memory',
      known: 'memory',
    },
  ),
  tube(
    'shim',
    'lever shim',
    { kind: 'lever-clamp', key: 'boreMm' },
    { kind: 'grip-area', key: 'diameterMm' },
    23.8,
    22.2,
    {
      caution: 'The lever must not turn when you hang on it.',
      source: memory,
      known: 'memory',
    },
  ),
];
