import type { InterfaceRow } from '../faces/interfaceRow.ts';

const overview = 'overview of axle standards';
const crib = 'bicycle encyclopaedia, crib sheet of spacings';
const sheets = 'makers’ sheets of gear and back-pedal hubs, from memory; such hubs vary, measure';
const weak = { known: 'memory' } as const;
const spacing = (
  id: string,
  spacingMm: number,
  label: string,
  source: string,
  rest: Partial<InterfaceRow> = {},
): InterfaceRow => ({
  id,
  label,
  faces: { 'end-spacing': { spacingMm }, 'hub-spacing': { spacingMm } },
  source,
  known: 'seen',
  ...rest,
});

/** Widths between the frame ends, and over the locknuts of the hubs made for them. */
export const spacings: readonly InterfaceRow[] = [
  spacing('front-100', 100, '100 mm, standard front', overview),
  spacing('front-110', 110, '15 × 110, wide front', overview),
  spacing('rear-108', 108, '108 mm, older BMX hubs', 'hub column on frame ends'),
  spacing(
    'rear-110',
    110,
    '110 mm, BMX, back-pedal hubs, 20 in trials, old track',
    `trials shop’s hub pages; ${crib}`,
  ),
  spacing('rear-112', 112, '112 mm, back-pedal hubs', sheets, weak),
  spacing('rear-114', 114, '114 mm, three- and four-speed hub gears', crib),
  spacing('rear-116', 116, '116 mm, 20 in trials', 'trials shop’s hub pages'),
  spacing('rear-117', 117, '117 mm, three-speed hub gears', sheets, weak),
  spacing('rear-118', 118, '118 mm, hub gears with back-pedal brake', sheets, weak),
  spacing('rear-120', 120, '120 mm, track, five sprockets, flip-flop', 'fixed-gear blog on hub spacing'),
  spacing('rear-126', 126, '126 mm, six and seven sprockets', 'bike shop’s page on hub spacing'),
  spacing('rear-127', 127, '127 mm, seven-speed hub gears', sheets, weak),
  spacing('rear-130', 130, '130 mm, road with rim brakes', overview),
  spacing('rear-132', 132, '132 mm, eight-speed hub gears', sheets, weak),
  spacing('rear-135', 135, 'mountain bike, 5 × 135', overview),
  spacing('rear-141', 141, '141 mm, wide hub, open slots', overview),
  spacing('rear-142', 142, '12 × 142 thru-axle', overview, {
    remark: 'The inner faces are 135 apart, with a pocket of 3.5 on each side (from memory).',
  }),
  spacing('rear-148', 148, '12 × 148 through', overview),
  spacing('rear-157', 157, '12 × 157 through', "a bottom bracket vendor's mountain bike overview"),
];

/** Hub and frame may differ by this much and be pulled together by hand. */
export const spacingSlack = {
  slackMm: 1,
  source: 'our own limit, from the 108 and 110 hubs that share BMX frames',
  known: 'proposal',
} as const;

/** Cold-setting a steel frame, total. */
export const coldSet = {
  usualMm: 5,
  mostMm: 10,
  source: 'common practice, no source: 126 to 130 often, 120 to 130 sometimes, more never',
  known: 'proposal',
} as const;
