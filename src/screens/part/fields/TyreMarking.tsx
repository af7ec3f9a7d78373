import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { FaceDraft } from '../../../drafts/faceDraft.ts';
import { isUnusualSeat, readTyreMarking, withMarking } from '../../../drafts/tyreSizeDraft.ts';

/** The marking of a tyre or rim, read into its sizes; where a name means several rims, each can be taken. */
export function TyreMarking({ face, onFace }: { face: FaceDraft; onFace: (face: FaceDraft) => void }) {
  const [text, setText] = useState('');
  const { offers, words } = readTyreMarking(text);
  const seat = face.sizes['beadSeatMm'];
  const unusual = seat?.unit === 'mm' && isUnusualSeat(seat.typed);
  return (
    <>
      <TextField
        label="Size as printed"
        hint="47-622, 26 x 1 3/8 or 700 x 28C"
        value={text}
        onInput={setText}
        maxLength={40}
      />
      {words && (
        <Notice kind="caution" title={words}>
          The number after the dash is the bead seat, in mm.
        </Notice>
      )}
      {offers.map((offer) => (
        <Button
          key={offer.beadSeatMm}
          wide
          onPress={() => {
            onFace(withMarking(face, offer));
            setText('');
          }}
        >
          {face.kind === 'tyre-bead'
            ? `Take ${offer.widthMm} mm wide on ${offer.beadSeatMm} mm`
            : `Take ${offer.beadSeatMm} mm`}
        </Button>
      ))}
      {unusual && (
        <Notice kind="caution" title={`A bead seat of ${seat.typed} mm is unusual`}>
          Read the three-digit number again. It is kept as you enter it.
        </Notice>
      )}
    </>
  );
}
