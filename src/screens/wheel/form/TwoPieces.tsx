import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { erdByPieces } from '../../../drafts/wheelDraft.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import type { SideFieldsProps } from './SideFields.tsx';

/** Several measurements show whether the rim is round. */
export const MOST_ERDS = 4;

/** The rim diameter worked out from two rods, or two nipples, in opposite holes. */
export function TwoPieces({ draft, change }: Pick<SideFieldsProps, 'draft' | 'change'>) {
  const { erds, erdBy, erdPiece, erdGap } = draft;
  const rods = erdBy === 'rods';
  const found = erdByPieces(draft);
  const free = erds.indexOf('');
  const take = (mm: number) => {
    const text = String(Math.round(mm * 100) / 100);
    const taken = free < 0 ? [...erds, text] : erds.map((erd, at) => (at === free ? text : erd));
    change({ erds: taken, erdGap: '' });
  };
  return (
    <Fold label="Work it out from two rods or nipples">
      <div class="stack lower">
        <Choice
          label="In opposite holes"
          value={erdBy}
          onChoose={(chosen) => change({ erdBy: chosen })}
          options={[
            { value: 'rods', label: 'Two rods', hint: 'Or two old spokes of equal, known length.' },
            {
              value: 'nipples',
              label: 'Two nipples',
              hint: 'Measured between the faces the spokes go into.',
            },
          ]}
        />
        <NumberField
          label={rods ? 'Length of one rod' : 'Nipple, face to spoke end'}
          typed={erdPiece}
          unit="mm"
          onTyped={(typed) => change({ erdPiece: typed })}
        />
        <NumberField
          label="Gap between them"
          typed={erdGap}
          unit="mm"
          onTyped={(typed) => change({ erdGap: typed })}
          error={found && !found.ok ? found.sentence : undefined}
        />
        {found?.ok && (free >= 0 || erds.length < MOST_ERDS) && (
          <Button icon="check" onPress={() => take(found.mm)}>
            {`Use ${numberText(found.mm, 1)} mm`}
          </Button>
        )}
      </div>
    </Fold>
  );
}
