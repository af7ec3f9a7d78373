import { dishlessCut, shortenHub } from '../../mechanics/wheels/hubShortening.ts';
import { holeAngleDeg, pairedCrossingAnglesDeg, twoToOne } from '../../mechanics/wheels/lacing.ts';
import { buttedPieces } from '../../mechanics/wheels/spokeCrossing.ts';
import {
  evenDiameterMm,
  spokeStiffnessN,
  spokeStretchMm,
} from '../../mechanics/wheels/spokeLengthCorrections.ts';
import { erdFromNipplesMm, erdFromRodsMm } from '../../mechanics/wheels/spokeLengthErd.ts';
import { NIPPLE_PITCH_MM, tensionPerTurnN } from '../../mechanics/wheels/spokeTensionNipple.ts';
import { given as input } from '../../mechanics/working.ts';
import { bareAsked, forceAsked, lengthAsked, type Reckoning, worked } from './reckoning.ts';

const geometry = 'geometry; derived here';
const articles = 'tool makers’ and wheelbuilders’ articles on measuring rims';

const rimDiameter: Reckoning = {
  id: 'rim-diameter',
  label: 'Effective rim diameter',
  about: 'The diameter a spoke is calculated to, from two rods or two nipples in opposite holes.',
  group: 'Wheels',
  asks: [
    {
      key: 'way',
      label: 'Measured with',
      options: [
        { value: 'rods', label: 'Two rods or old spokes' },
        { value: 'nipples', label: 'Nipples in the rim' },
      ],
      first: 'rods',
    },
    lengthAsked('each', 'Length of one rod or nipple', [5, 400], {
      hint: 'Rod: from its end in the middle to where the spoke end should sit. Nipple: from its face at the rim to there.',
    }),
    lengthAsked('between', 'Between the two', [0, 800], { hint: 'In one line through the axle.' }),
  ],
  compute(given) {
    const [eachMm, betweenMm] = [given.number('each'), given.number('between')];
    const rods = given.choice('way') === 'rods';
    if (rods && (eachMm < 20 || betweenMm > 700))
      return { ok: false, reason: 'These are no rods for a rim.' };
    if (!rods && (eachMm > 30 || betweenMm < 60))
      return { ok: false, reason: 'These are no nipples in a rim.' };
    const erdMm = rods ? erdFromRodsMm(eachMm, betweenMm) : erdFromNipplesMm(betweenMm, eachMm);
    const inputs = [input('one', eachMm, 'mm'), input('between', betweenMm, 'mm')];
    return {
      ok: true,
      results: [
        { label: 'Diameter', working: worked(erdMm, 'mm', '2 · one + between', inputs, articles, 'seen') },
      ],
      remarks: [
        'Measure at three places round the rim: more than 1 mm apart is a slip or a rim out of round.',
      ],
    };
  },
};

const hubCut: Reckoning = {
  id: 'hub-cut',
  label: 'Hub cut to another width',
  about: 'What comes off each end of an axle so that the wheel needs no dish.',
  group: 'Wheels',
  asks: [
    lengthAsked('now', 'Over the locknuts now', [70, 200]),
    lengthAsked('wanted', 'Between the dropouts', [70, 200]),
    lengthAsked('left', 'Left flange to the middle', [0, 120], {
      hint: 'Middle between the locknuts, along the axle.',
    }),
    lengthAsked('drive', 'Drive-side flange to the middle', [0, 120]),
  ],
  compute(given) {
    const [nowMm, wantedMm] = [given.number('now'), given.number('wanted')];
    const [leftFlangeMm, driveFlangeMm] = [given.number('left'), given.number('drive')];
    if (Math.abs(nowMm - wantedMm) > 60)
      return { ok: false, reason: 'That is more than any axle is cut or lengthened.' };
    const cut = dishlessCut({ leftFlangeMm, driveFlangeMm }, nowMm - wantedMm);
    if (Math.max(Math.abs(cut.leftMm), Math.abs(cut.driveMm)) > 60)
      return { ok: false, reason: 'These flanges are too far apart for a wheel without dish.' };
    const hub = { overLocknutMm: nowMm, chainlineMm: null, rotorGapMm: null, leftFlangeMm, driveFlangeMm };
    const inputs = [
      input('now', nowMm, 'mm'),
      input('wanted', wantedMm, 'mm'),
      input('left flange', leftFlangeMm, 'mm'),
      input('drive flange', driveFlangeMm, 'mm'),
    ];
    const end = (label: string, mm: number, sign: string) => ({
      label,
      working: worked(
        mm,
        'mm',
        `(now − wanted ${sign} (left flange − drive flange)) / 2`,
        inputs,
        geometry,
        'exact',
      ),
    });
    const after = shortenHub(hub, cut).leftFlangeMm;
    return {
      ok: true,
      results: [
        end('Off the left end', cut.leftMm, '−'),
        end('Off the drive end', cut.driveMm, '+'),
        {
          label: 'Each flange to the middle then',
          working: worked(after, 'mm', '(left flange + drive flange) / 2', inputs, geometry, 'exact'),
        },
      ],
      remarks: [
        ...(cut.leftMm < 0 || cut.driveMm < 0 ? ['Below zero: washers go on at that end.'] : []),
        'Chainline, rotor and gears move with the hub: check them before the saw. A cut axle does not grow back.',
      ],
    };
  },
};

const nippleTurn: Reckoning = {
  id: 'nipple-turn',
  label: 'One turn of a nipple',
  about: 'How much a spoke stretches, and what a turn of its nipple adds at most.',
  group: 'Wheels',
  asks: [
    lengthAsked('length', 'Length of the spoke', [80, 400]),
    lengthAsked('thin', 'Diameter of its middle', [1, 4], { first: '2' }),
    lengthAsked('thick', 'Diameter of its ends', [1, 4], { first: '2', hint: 'Same for a plain spoke.' }),
    forceAsked('tension', 'Tension', [0, 3000], { first: '1000' }),
  ],
  compute(given) {
    const [lengthMm, tensionN] = [given.number('length'), given.number('tension')];
    const [thinMm, thickMm] = [given.number('thin'), given.number('thick')];
    if (thinMm > thickMm) return { ok: false, reason: 'A butted spoke is thicker at its ends.' };
    const pieces = buttedPieces(lengthMm, thinMm, thickMm);
    const stiffnessN = spokeStiffnessN(pieces);
    const inputs = [input('L', lengthMm, 'mm'), input('E·A', stiffnessN, 'N')];
    const hooke = 'Hooke’s law; ends of 30 and 41 mm on a butted spoke are an assumption';
    return {
      ok: true,
      results: [
        {
          label: 'A turn adds at most',
          working: worked(
            tensionPerTurnN(pieces),
            'N',
            'E·A · pitch / L',
            [...inputs, input('pitch', NIPPLE_PITCH_MM, 'mm')],
            `${hooke}; pitch of 56 to the inch from memory`,
            'memory',
          ),
        },
        {
          label: 'Stretch',
          working: worked(
            spokeStretchMm(tensionN, pieces),
            'mm',
            'T · L / E·A',
            [...inputs, input('T', tensionN, 'N')],
            hooke,
            'proposal',
          ),
        },
        {
          label: 'As stiff as a plain spoke of',
          working: worked(evenDiameterMm(stiffnessN), 'mm', '√(4 · E·A / π·E)', inputs, hooke, 'proposal'),
        },
      ],
      remarks: ['The rim gives and the neighbours go slack, so the gain is smaller.'],
    };
  },
};

const unevenHoles: Reckoning = {
  id: 'uneven-holes',
  label: 'Spoke angle on an uneven rim',
  about: 'The angle between the two holes of a spoke where rim holes come in pairs or in threes.',
  group: 'Wheels',
  asks: [
    {
      key: 'drilling',
      label: 'Rim holes',
      options: [
        { value: 'paired', label: 'In pairs of one side' },
        { value: 'two-to-one', label: 'Even, two of three to one side' },
        { value: 'degrees', label: 'Two angles read off' },
      ],
      first: 'paired',
    },
    bareAsked('spokes', 'Spokes in all', [8, 72], { whole: true, first: '24' }),
    bareAsked('crosses', 'Crossings', [0, 9], { whole: true, first: '2' }),
    bareAsked('gap', 'Between the holes of a pair', [0.5, 90], { mark: '°', optional: true }),
    bareAsked('rim', 'Rim hole at', [0, 360], { mark: '°', optional: true }),
    bareAsked('hub', 'Hub hole at', [0, 360], { mark: '°', optional: true }),
  ],
  compute(given) {
    const [spokes, crosses] = [given.number('spokes'), given.number('crosses')];
    const drilling = given.choice('drilling');
    if (drilling === 'degrees') {
      const [rim, hub] = [given.maybe('rim'), given.maybe('hub')];
      if (rim === undefined || hub === undefined)
        return { ok: false, reason: 'Give both angles, from one side.' };
      const inputs = [input('rim hole', rim, '°'), input('hub hole', hub, '°')];
      const working = worked(holeAngleDeg(rim, hub), '°', 'the shorter way round', inputs, geometry, 'exact');
      return { ok: true, results: [{ label: 'Angle', working }] };
    }
    const thirds = drilling === 'two-to-one';
    if (thirds && (spokes % 3 !== 0 || spokes < 12 || spokes > 54))
      return { ok: false, reason: 'Two to one divides by three, from 12 to 54 spokes.' };
    if (!thirds && spokes % 4 !== 0) return { ok: false, reason: 'Pairs of both sides divide by four.' };
    const side = thirds ? twoToOne(spokes) : { many: spokes / 2, pairGapDeg: given.maybe('gap') };
    const { many, pairGapDeg } = side;
    if (pairGapDeg === undefined) return { ok: false, reason: 'Give the angle between the holes of a pair.' };
    if (pairGapDeg > 360 / many)
      return { ok: false, reason: 'The holes of a pair are nearer than even ones.' };
    if (many > 36 || many < 4 || (crosses * 360) / many > 180)
      return { ok: false, reason: 'That many crossings do not go on this flange.' };
    const { narrowDeg, wideDeg } = pairedCrossingAnglesDeg(crosses, many, pairGapDeg);
    const inputs = [
      input('holes of the side', many, ''),
      input('pair', pairGapDeg, '°'),
      input('crossings', crosses, ''),
    ];
    const way = (label: string, deg: number, sign: string) => ({
      label,
      working: worked(deg, '°', `crossings·360/n ${sign} (360/n − pair)/2`, inputs, geometry, 'exact'),
    });
    return {
      ok: true,
      results: [way('Pair leans together', narrowDeg, '−'), way('Pair leans apart', wideDeg, '+')],
      remarks: ['One hole of the hub further changes one into the other.'],
    };
  },
};

/** Sizes taken and choices made before a wheel is laced. */
export const wheelSizeReckonings: readonly Reckoning[] = [rimDiameter, hubCut, nippleTurn, unevenHoles];
