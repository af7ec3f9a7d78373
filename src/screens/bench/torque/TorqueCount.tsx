import { Button } from '../../../controls/Button.tsx';
import { Tally } from '../../../controls/figures/Tally.tsx';
import { anyCounted, type BoltCount, boltBack, nextPass } from '../../../practice/bench/boltCount.ts';

/** More bolt heads than this are told by number alone. */
const MOST_DRAWN = 16;

export interface TorqueCountProps {
  count: BoltCount;
  /** Bolts of the joint, ≥ 1. */
  of: number;
  /** What they are called: bolt, nut, cup. */
  noun: string;
  onCount: (count: BoltCount) => void;
}

/** The bolts counted off, with the ways to take one back and to go round once more. */
export function TorqueCount({ count, of, noun: one, onCount }: TorqueCountProps) {
  const noun = `${of === 1 ? one : `${one}s`}${count.pass === 1 ? '' : `, pass ${count.pass}`}`;
  const many = of > MOST_DRAWN;
  return (
    <div class="bench-count">
      {many ? (
        <p class="far">{`${count.tight} of ${of} ${noun}`}</p>
      ) : (
        <Tally of={of} done={count.tight} noun={noun} />
      )}
      {(many || anyCounted(count)) && (
        <div class="button-pair">
          {anyCounted(count) && (
            <Button size="greasy" icon="minus" onPress={() => onCount(boltBack(count, of))}>
              Undo one
            </Button>
          )}
          {many && count.tight < of && (
            <Button size="greasy" icon="tally" onPress={() => onCount({ pass: count.pass, tight: of })}>
              All of them
            </Button>
          )}
          {count.tight >= of && of > 1 && (
            <Button size="greasy" icon="undo" onPress={() => onCount(nextPass(count))}>
              Pass {count.pass + 1}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
