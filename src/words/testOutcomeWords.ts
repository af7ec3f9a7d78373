import { spanText } from './dayText.ts';

/** A phone that is awake is never this late. Our own choice. */
const IN_TIME_MS = 3000;

/**
 * How a test reminder went, in a line.
 * @param outcome how late it came, ms, and what got through
 * @example testOutcomeWords({ lateMs: 200, rang: true, shown: true }) //=> 'In time: it rang and showed a message.'
 */
export function testOutcomeWords({
  lateMs,
  rang,
  shown,
}: {
  lateMs: number;
  rang: boolean;
  shown: boolean;
}): string {
  const late = lateMs < 60_000 ? `${Math.round(lateMs / 1000)} s` : spanText(lateMs);
  const when = lateMs < IN_TIME_MS ? 'In time' : `${late} late, the phone had put the app to sleep`;
  const ways = [
    ...(rang ? ['it rang'] : []),
    ...(shown ? [rang ? 'showed a message' : 'it showed a message'] : []),
  ];
  return `${when}: ${ways.length === 0 ? 'no sound and no message came through' : ways.join(' and ')}.`;
}
