import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../src/fit/checkPile.ts';
import type { PilePart } from '../../../src/fit/pile.ts';
import type { KeptJoint } from '../../../src/fit/topicJoints.ts';
import { unjoined } from '../../../src/fit/unjoined.ts';
import { magpie } from '../../fixtures/magpie.ts';

const partsOf = (...ids: string[]): PilePart[] => magpie.filter(({ partId }) => ids.includes(partId));
const fitting = (parts: PilePart[]) => checkPile(parts).fitting;
const joint = (kind: KeptJoint['kind'], partIds: string[], state = 'torqued'): KeptJoint => ({
  ...{ kind, state, partIds, between: [] },
});

describe('[L5] parts that meet without a joint', () => {
  const saddle = partsOf('saddle', 'seatpost');
  const front = partsOf('frame', 'fork', 'headset');

  test.each([
    ['no joint at all', saddle, [], ['seatpost and saddle']],
    ['their joint', saddle, [joint('saddle-rails', ['saddle', 'seatpost'])], []],
    [
      'their joint, taken apart',
      saddle,
      [joint('saddle-rails', ['saddle', 'seatpost'], 'apart')],
      ['seatpost and saddle'],
    ],
    ['a joint of another kind', saddle, [joint('seatpost', ['seatpost', 'frame'])], ['seatpost and saddle']],
    ['one of them in the joint, the other in the words', saddle, [joint('saddle-rails', ['seatpost'])], []],
    [
      'a headset in its joint; the race on the fork is another',
      front,
      [joint('headset', ['frame', 'headset'])],
      ['steel fork and external headset'],
    ],
    ['one joint for frame, headset and fork', front, [joint('headset', ['frame', 'headset', 'fork'])], []],
    [
      'a headset without any joint is named once, its race beside it',
      front,
      [],
      ['steel track frame and external headset', 'steel fork and external headset'],
    ],
  ])('%s', (_what, parts, joints, pairs) => {
    expect(unjoined(fitting(parts), parts, joints)).toEqual(pairs);
  });

  test('what does not matter is not asked for: a chain on its ring wants no wrench', () => {
    const parts = partsOf('chain', 'chainring');
    expect(fitting(parts).map(({ topic }) => topic)).toContain('chain-on-ring');
    expect(unjoined(fitting(parts), parts, [])).toEqual([]);
  });
});
