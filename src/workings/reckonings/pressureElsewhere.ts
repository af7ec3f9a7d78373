import {
  afterChecksBar,
  atmosphereBar,
  atTemperatureBar,
  SEA_LEVEL_BAR,
} from '../../mechanics/leak/tyreAir.ts';
import { tyreVolumeL } from '../../mechanics/tyres/tyreVolume.ts';
import { given as input } from '../../mechanics/working.ts';
import {
  bareAsked,
  lengthAsked,
  pressureAsked,
  type Reckoning,
  temperatureAsked,
  worked,
} from './reckoning.ts';

/** Air that a hose takes from the tyre at every check, mL. Own proposal; a handbook's example. */
const HOSE_ML = 30;

/** What the gauge shows where the bike is ridden: colder, warmer, higher up. */
export const pressureElsewhere: Reckoning = {
  id: 'pressure-elsewhere',
  label: 'Tyre pressure elsewhere',
  about: 'What the gauge shows in the cold, in the heat or up a hill, with the same air in the tyre.',
  group: 'Tyres',
  asks: [
    pressureAsked('gauge', 'Pressure now', [0.2, 12]),
    temperatureAsked('from', 'Temperature now', [-30, 60], { first: '20' }),
    temperatureAsked('to', 'Temperature there', [-30, 60], { first: '20' }),
    bareAsked('height', 'How much higher than here', [0, 5000], { mark: 'm', first: '0' }),
    lengthAsked('width', 'Width of the tyre', [18, 130], {
      optional: true,
      hint: 'To see what a check costs.',
    }),
  ],
  compute(given) {
    const [gaugeBar, fromC, toC] = [given.number('gauge'), given.number('from'), given.number('to')];
    const heightM = given.number('height');
    const widthMm = given.maybe('width');
    const airBar = atmosphereBar(heightM);
    const thereBar = atTemperatureBar(gaugeBar, fromC, toC) + SEA_LEVEL_BAR - airBar;
    const inputs = [
      ...[input('p', gaugeBar, 'bar'), input('T1', fromC, '°C'), input('T2', toC, '°C')],
      input('h', heightM, 'm'),
    ];
    return {
      ok: true,
      results: [
        {
          label: 'There',
          working: worked(
            thereBar,
            'bar',
            'p2 = (p + Pa)·T2/T1 − Pa(h), temperatures from absolute zero',
            inputs,
            'gas of constant volume; air pressure: US Standard Atmosphere 1976',
            'exact',
          ),
        },
        ...(widthMm === undefined
          ? []
          : [
              {
                label: 'After one check with a hose',
                working: worked(
                  // The middle of the usual bead seats: the size hardly matters here.
                  afterChecksBar(gaugeBar, tyreVolumeL(widthMm, 584), HOSE_ML, 1),
                  'bar',
                  'p·V / (V + hose of 30 mL)',
                  [input('p', gaugeBar, 'bar'), input('W', widthMm, 'mm')],
                  'two volumes joined at one temperature; the hose is our suggestion',
                  'proposal',
                ),
              },
            ]),
      ],
      remarks: ['Counted from sea level; from a higher place the rise is a little smaller.'],
    };
  },
};
