import type { GroupId } from '../../fit/openFindings.ts';
import type { FindingGroup } from '../../practice/pile/findingGroups.ts';

const summaryWords: Record<GroupId, (count: number) => string> = {
  'does-not-fit': (count) => `${count} ${count === 1 ? 'does' : 'do'} not fit`,
  'one-way-only': (count) => `${count} only with a permanent change`,
  'not-known': (count) => `${count} not known`,
  'fits-with': (count) => `${count} ${count === 1 ? 'needs' : 'need'} an adapter or shim`,
  accepted: (count) => `${count} accepted`,
  fits: (count) => `${count} ${count === 1 ? 'fits' : 'fit'}`,
};

/** The whole answer in one line, spoken again when it changes. */
export function Summary({ groups }: { groups: readonly FindingGroup[] }) {
  if (groups.length === 0) return null;
  return (
    <p class="fit-said" role="status">
      {`${groups.map(({ group, findings }) => summaryWords[group](findings.length)).join(', ')}.`}
    </p>
  );
}
