import { Button } from '../../../controls/Button.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { numberText } from '../../../mechanics/numberText.ts';
import type { PitchWindow } from '../../../mechanics/wheels/spokePitch.ts';
import { FILTERED_SENTENCE, noSoundSentences } from '../../../words/wheel/earWords.ts';
import { type SayAfter, useListening } from './useListening.ts';

export interface ListenToSpokeProps {
  place: number;
  window: PitchWindow;
  /** which spoke: said at the start */
  opening: string;
  onRead: SayAfter;
}

/** Pluck three times: the phone hears the pitch and goes to the next spoke by itself. */
export function ListenToSpoke({ place, window, opening, onRead }: ListenToSpokeProps) {
  const { state, start, stop } = useListening(place, window, opening, onRead);
  const range = `${numberText(window.lowHz, 0)} to ${numberText(window.highHz, 0)} Hz`;
  return (
    <div class="stack lower">
      {state.is === 'on' ? (
        <Button icon="stop" wide under={`Listening for ${range}`} onPress={stop}>
          Stop listening
        </Button>
      ) : (
        <Button icon="microphone" wide disabled={state.is === 'asking'} under={range} onPress={start}>
          Listen
        </Button>
      )}
      <p class="small" role="status">
        {state.is === 'on' ? state.turn.sentence : ''}
      </p>
      {state.is === 'on' && state.filtered && <Notice kind="caution" title={FILTERED_SENTENCE} />}
      {state.is === 'off' && state.why && <Notice kind="caution" title={noSoundSentences[state.why]} />}
    </div>
  );
}
