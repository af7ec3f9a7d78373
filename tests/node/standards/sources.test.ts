import { describe, expect, test } from 'vitest';
import { recheckSchedule } from '../../../src/standards/checks/recheckSchedule.ts';
import { neverDeferred } from '../../../src/standards/checks/releaseRules.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import { overturningMps2, stoppingFigures } from '../../../src/standards/checks/stoppingFigures.ts';
import { chainlines } from '../../../src/standards/interfaces/chainlines.ts';
import { elasticMaterials } from '../../../src/standards/interfaces/elasticMaterials.ts';
import { mounts } from '../../../src/standards/interfaces/mounts.ts';
import { rotorMinimums, rotorSizes } from '../../../src/standards/interfaces/rotors.ts';
import { jointKinds } from '../../../src/standards/jointKinds.ts';
import type { Sourced } from '../../../src/standards/known.ts';
import { publishedFigures } from '../../../src/standards/publishedFigures.ts';
import { cureGrid } from '../../../src/standards/screws/cureGrid.ts';
import { embedmentSource } from '../../../src/standards/screws/embedment.ts';
import { lockers } from '../../../src/standards/screws/lockers.ts';
import { beadSeatNames } from '../../../src/standards/tyres/beadSeats.ts';
import { widthTables } from '../../../src/standards/tyres/tyreWidths.ts';
import { valveLengths, valves } from '../../../src/standards/tyres/valves.ts';

const tables: [string, readonly Sourced[]][] = [
  ['bead seats', beadSeatNames],
  ['chainlines', chainlines],
  ['cure grid', [cureGrid]],
  ['elastic materials', Object.values(elasticMaterials)],
  ['embedment', [embedmentSource]],
  ['joint kinds', jointKinds],
  ['lockers', lockers],
  ['caliper mounts', mounts],
  ['published figures', publishedFigures],
  ['re-check schedule', recheckSchedule],
  ['never deferred', neverDeferred],
  ['ride check', rideCheck.flatMap((group) => group.items)],
  ['rotors', [...rotorSizes, ...rotorMinimums]],
  ['stopping figures', [...stoppingFigures, overturningMps2]],
  ['tyre widths', widthTables],
  ['valves', [...valves, valveLengths]],
];

describe.each(tables)('%s', (_, rows) => {
  test('every row says where it stands', () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row.source).toMatch(/\S{4}/);
  });

  test('what is remembered does not pass for seen, and the other way round', () => {
    for (const { source, known } of rows)
      if (/from memory/.test(source)) expect(known, source).toBe('memory');
      else if (known === 'memory') expect.fail(`not said in the source: ${source}`);
  });
});
