import type { Id } from '../../journal/entries.ts';
import { wheelsOf } from '../../practice/wheel/wheelsOf.ts';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';

/** Where the wheel of some parts is written down, or is to be. */
export interface WheelWay {
  href: string;
  /** Name of the wheel, or what there is to do. */
  words: string;
}

/**
 * The way from a joint, a step or a finding to its wheel.
 * @param partIds parts of the joint: hub, rim, spokes
 */
export function useWheelWay(bikeId: Id, partIds: readonly Id[]): WheelWay {
  const seen = useView('wheels');
  const [wheel] = seen.is === 'there' ? wheelsOf(seen.value, partIds) : [];
  return wheel
    ? { href: hrefOf({ at: 'wheel', wheelId: wheel.wheelId }), words: wheel.name }
    : { href: hrefOf({ at: 'new-wheel', place: `bike:${bikeId}` }), words: 'Build a wheel' };
}
