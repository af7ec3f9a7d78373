import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';

export interface TensionPair {
  reading: string;
  tension: string;
}

export interface PairRowsProps {
  rows: readonly TensionPair[];
  /** What is read: it is numbered in each row. */
  label: string;
  wrong: (at: number) => string | undefined;
  onRows: (rows: TensionPair[]) => void;
}

/** Rows of a reading and the tension that goes with it. */
export function PairRows({ rows, label, wrong, onRows }: PairRowsProps) {
  const put = (at: number, changed: Partial<TensionPair>) =>
    onRows(rows.map((row, index) => (index === at ? { ...row, ...changed } : row)));
  return (
    <>
      {rows.map((row, at) => (
        <div class="wheel-row" key={at}>
          <NumberField
            label={`${label} ${at + 1}`}
            typed={row.reading}
            onTyped={(reading) => put(at, { reading })}
            error={wrong(at)}
          />
          <NumberField label="Tension, N" typed={row.tension} onTyped={(tension) => put(at, { tension })} />
        </div>
      ))}
      <Button icon="plus" onPress={() => onRows([...rows, { reading: '', tension: '' }])}>
        Add a row
      </Button>
    </>
  );
}
