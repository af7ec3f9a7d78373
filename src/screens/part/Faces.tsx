import { Fragment } from 'preact';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import {
  emptyFace,
  type FaceDraft,
  facesOfKind,
  facesToAdd,
  faceUnreadable,
} from '../../drafts/faceDraft.ts';
import { type FaceKind, faceKinds } from '../../standards/faces/faceKinds.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { useLogbook } from '../door.tsx';
import { type Chosen, FaceFields } from './fields/FaceFields.tsx';

const intoSight = (node: HTMLElement | null) => node?.scrollIntoView();

export interface FacesProps {
  kind: string;
  faces: FaceDraft[];
  chosen: Chosen;
  error: string | undefined;
  /** The face a finding asks for: it stands open and in sight. */
  asked?: string | undefined;
  onFaces: (faces: FaceDraft[]) => void;
}

/** The faces of a part: those its kind has, each folded; an adapter or odd part takes any. */
export function Faces({ kind, faces, chosen, error, asked, onFaces }: FacesProps) {
  const logbook = useLogbook();
  const own = facesOfKind(kind).filter((face) => !faces.some((one) => one.kind === face));
  const addable = facesToAdd(kind);
  if (faces.length === 0 && own.length === 0 && addable.length === 0) return null;
  const put = (face: FaceDraft) =>
    onFaces(
      faces.some(({ faceId }) => faceId === face.faceId)
        ? faces.map((one) => (one.faceId === face.faceId ? face : one))
        : [...faces, face],
    );
  const inOrder = [...faces, ...own.map((face) => emptyFace(face, face))].toSorted(
    (a, b) => facesOfKind(kind).indexOf(a.kind) - facesOfKind(kind).indexOf(b.kind),
  );
  return (
    <section>
      <Ruler label="Sizes" end={<span class="small">optional</span>} />
      <p class="small lead">The sizes that decide what it fits. Add now or later.</p>
      {error && (
        <p class="field-error" role="alert">
          {error}
        </p>
      )}
      {inOrder.map((face) => (
        <Fragment key={face.faceId}>
          {face.faceId === asked && <span ref={intoSight} />}
          <FaceFields
            face={face}
            chosen={chosen}
            open={addable.length > 0 || face.faceId === asked}
            wrong={error !== undefined && faceUnreadable(face)}
            between={addable.length > 0}
            onFace={(next) => put(next)}
          />
        </Fragment>
      ))}
      {addable.length > 0 && (
        <SelectField
          label="Add a face"
          unchosen="Where?"
          value={undefined}
          options={addable.map((value) => ({ value, label: sentenceCase(faceKinds[value].label) }))}
          onChoose={(value: FaceKind) => put(emptyFace(logbook.newId(), value))}
        />
      )}
    </section>
  );
}
