import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { CaliperDrawing } from '../../../controls/figures/CaliperDrawing.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { type FaceDraft, faceState, firstUnit } from '../../../drafts/faceDraft.ts';
import { readSize, type SizeDraft, type SizeUnit, unitsFor } from '../../../drafts/sizeDraft.ts';
import { standardsFor } from '../../../fit/faces/standardOf.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { unitLabel } from '../../../mechanics/units.ts';
import type { DimensionRow, FaceKindRow } from '../../../standards/faces/faceKind.ts';
import { faceKinds } from '../../../standards/faces/faceKinds.ts';
import type { InterfaceRow, SizeSpan } from '../../../standards/faces/interfaceRow.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';
import { TyreMarking } from './TyreMarking.tsx';

export interface Chosen {
  lengthUnit: SizeUnit;
  pressureUnit: SizeUnit;
}

const MEASURED_ONLY = 'measured-only';

interface SizeFieldProps {
  face: FaceDraft;
  row: DimensionRow;
  size: SizeDraft;
  onSize: (size: SizeDraft) => void;
}

/** One size: where the caliper goes stands under it, and what was probably meant when it cannot be right. */
function SizeField({ face, row, size, onSize }: SizeFieldProps) {
  const read = readSize(face.kind, row.key, size);
  const units = unitsFor(row.key);
  return (
    <>
      <NumberField
        label={sentenceCase(row.label)}
        hint={
          <span class="caliper-hint">
            <CaliperDrawing face={face.kind} dimension={row.key} />
            <span>{row.how}</span>
          </span>
        }
        typed={size.typed}
        {...(size.unit ? { unit: size.unit } : {})}
        units={units}
        error={read.is === 'wrong' ? read.sentence : undefined}
        onTyped={(typed, unit) => onSize({ ...size, typed, unit })}
      />
      {read.is === 'doubt' && (
        <Notice
          kind="caution"
          title={read.sentence}
          action={
            read.suggestion && (
              <Button onPress={() => read.suggestion && onSize({ ...size, ...read.suggestion })}>
                {`Take ${read.suggestion.typed}${read.suggestion.unit ? ` ${unitLabel[read.suggestion.unit]}` : ''}`}
              </Button>
            )
          }
        >
          Otherwise it is kept as you typed it.
        </Notice>
      )}
      {size.typed.trim() !== '' && units.includes('mm') && (
        <Toggle
          label="Printed, not measured"
          hint="From a stamp, drawing or catalogue. A measured size overrides it."
          on={size.printed === true}
          onToggle={(printed) => onSize({ ...size, printed })}
        />
      )}
    </>
  );
}

export interface FaceFieldsProps {
  face: FaceDraft;
  chosen: Chosen;
  open?: boolean;
  /** A size in it cannot be read, and the form was to be saved. */
  wrong?: boolean;
  /** The part goes between two others. */
  between?: boolean;
  onFace: (face: FaceDraft) => void;
}

const sizeSpanText = (mm: SizeSpan): string =>
  typeof mm === 'number' ? numberText(mm, 2) : `${numberText(mm[0], 2)} to ${numberText(mm[1], 2)}`;

/** What to know of a standard before its name is believed. */
function standardHint({ remark, others = [], known }: InterfaceRow): string | undefined {
  const met = others.map(({ what, mm }) => `${what} ${sizeSpanText(mm)}`).join(', ');
  const weak = known === 'memory' ? 'Table value not verified: measure it too.' : undefined;
  const words = [remark ?? weak, met && `Other parts like this measure ${met} mm.`].filter(Boolean).join(' ');
  return words === '' ? undefined : words;
}

/** What is asked of one face, in the order a hand measures; folded until it is opened. */
export function FaceFields({ face, chosen, open, wrong, between = false, onFace }: FaceFieldsProps) {
  const kindRow: FaceKindRow = faceKinds[face.kind];
  const standards = standardsFor(face.kind);
  const row = standards.find(({ id }) => id === face.standard);
  return (
    <Fold
      label={sentenceCase(kindRow.label)}
      end={faceState(face)}
      open={open === true}
      wrong={wrong === true}
    >
      <div class="stack face-fields">
        {standards.length > 0 && (
          <SelectField
            label="Standard"
            value={face.standard ?? MEASURED_ONLY}
            options={[
              { value: MEASURED_ONLY, label: 'no standard, measured' },
              ...standards.map(({ id, label }) => ({ value: id, label })),
            ]}
            hint={row && standardHint(row)}
            onChoose={(id) => onFace({ ...face, standard: id === MEASURED_ONLY ? null : id })}
          />
        )}
        {kindRow.dimensions.some(({ key }) => key === 'beadSeatMm') && (
          <TyreMarking face={face} onFace={onFace} />
        )}
        {kindRow.dimensions
          .filter((dimension) => between || !dimension.between)
          .map((dimension) => (
            <SizeField
              key={dimension.key}
              face={face}
              row={dimension}
              size={face.sizes[dimension.key] ?? { typed: '', unit: firstUnit(dimension.key, chosen) }}
              onSize={(size) => onFace({ ...face, sizes: { ...face.sizes, [dimension.key]: size } })}
            />
          ))}
        {(kindRow.traits ?? []).map(({ key, label, choices, how }) => (
          <SelectField
            key={key}
            label={sentenceCase(label)}
            hint={how}
            value={face.traits[key] ?? ''}
            options={[
              { value: '', label: 'not checked' },
              ...choices.map((value) => ({ value, label: value })),
            ]}
            onChoose={(value) => onFace({ ...face, traits: { ...face.traits, [key]: value } })}
          />
        ))}
        <TextField
          label="Note on this face"
          value={face.notes}
          onInput={(notes) => onFace({ ...face, notes })}
          maxLength={300}
        />
      </div>
    </Fold>
  );
}
