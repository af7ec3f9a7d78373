import { Button } from '../../../controls/Button.tsx';
import type { TorqueUnit, Typed } from '../../../mechanics/units.ts';
import type { BoltCount } from '../../../practice/bench/boltCount.ts';
import { countWords } from '../../../words/phrases.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';
import { torqueSaid } from './useTorqueLog.ts';

export interface TorqueMainProps {
  count: BoltCount;
  /** Bolts of the joint, ≥ 1. */
  of: number;
  /** What they are called: bolt, nut, cup. */
  noun: string;
  /** The target as one figure, both ends of its range, or nothing. */
  ends: readonly Typed<TorqueUnit>[];
  onBolt: () => void;
  onApplied: (applied: Typed<TorqueUnit>) => void;
  onType: () => void;
}

/** First every bolt is counted, then one deliberate tap on the figure logs it. Nothing is logged by counting. */
export function TorqueMain({ count, of, noun, ends, onBolt, onApplied, onType }: TorqueMainProps) {
  const { pass, tight } = count;
  if (tight < of) {
    const under = `${tight} of ${of} counted${pass === 1 ? '' : `, pass ${pass}`}`;
    return (
      <Button kind="main" size="greasy" icon="bolt" under={under} onPress={onBolt}>
        {sentenceCase(noun)} tight
      </Button>
    );
  }
  const logs = `Logs ${countWords(of, noun)}, ${pass === 1 ? '1 pass' : `${pass} passes`}`;
  const [single, upper] = ends;
  if (!single)
    return (
      <Button kind="main" size="greasy" icon="pencil" under={logs} onPress={onType}>
        Enter the torque
      </Button>
    );
  if (!upper)
    return (
      <Button kind="main" size="greasy" icon="spanner" under={logs} onPress={() => onApplied(single)}>
        Applied {torqueSaid(single)}
      </Button>
    );
  return (
    <div class="button-pair">
      {ends.map((end) => (
        <Button key={end.value} size="greasy" under="Applied" onPress={() => onApplied(end)}>
          {torqueSaid(end)}
        </Button>
      ))}
    </div>
  );
}
