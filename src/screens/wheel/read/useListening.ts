import { useEffect, useRef, useState } from 'preact/hooks';
import { type PluckStream, pluckStream } from '../../../mechanics/sound/pluckStream.ts';
import type { PitchWindow } from '../../../mechanics/wheels/spokePitch.ts';
import { afterSound, type EarTurn, freshTurn } from '../../../practice/wheel/earTurn.ts';
import { type Microphone, openMicrophone } from '../../../sensing/microphone.ts';
import { speaker, type ToneKind } from '../../../sensing/speech.ts';
import type { NoSound } from '../../../words/wheel/earWords.ts';

export type Listening =
  | { is: 'off'; why?: NoSound }
  | { is: 'asking' }
  | { is: 'on'; filtered: boolean; turn: EarTurn };

/** How often the microphone is looked at, ms: a pluck is known a sixth of a second after it. */
const EVERY_MS = 60;
/** The microphone settles, and the browser's memory fills, s. */
const SETTLE_S = 0.4;
/** After the phone itself has spoken, s. */
const ECHO_S = 0.15;

/** What the phone says after a reading; nothing where the walk is over. */
export type SayAfter = (hz: number) => { sentence: string; tone: ToneKind } | undefined;

/**
 * Listens to one spoke after the other.
 * @param place of the spoke at hand: with another one the plucks begin anew
 * @param window where its pitch lies
 * @param opening what the phone says at the start: which spoke
 * @param onRead takes the pitch, and tells what to say
 */
export function useListening(place: number, window: PitchWindow, opening: string, onRead: SayAfter) {
  const [state, setState] = useState<Listening>({ is: 'off' });
  const open = useRef<{ microphone: Microphone; stream: PluckStream; timer: number } | undefined>(undefined);
  const turn = useRef<EarTurn>(freshTurn);
  const loud = useRef(speaker());
  const talking = useRef(false);
  const gone = useRef(false);
  const read = useRef(onRead);
  read.current = onRead;

  const stop = (why?: NoSound) => {
    const { current } = open;
    open.current = undefined;
    if (current) {
      clearInterval(current.timer);
      current.microphone.close();
    }
    loud.current.hush();
    turn.current = freshTurn;
    if (!gone.current) setState(why ? { is: 'off', why } : { is: 'off' });
  };
  const say = async (sentence: string, tone: ToneKind) => {
    talking.current = true;
    await loud.current.say(sentence, tone);
    talking.current = false;
    const { current } = open;
    if (current) current.stream.deafUntil(current.microphone.read().endS + ECHO_S);
  };
  const look = () => {
    const { current } = open;
    if (!current || talking.current) return;
    const { samples, endS } = current.microphone.read();
    for (const heard of current.stream.hear(samples, endS)) {
      if (heard.is === 'dead') return stop('dead');
      const after = afterSound(turn.current, heard);
      turn.current = after.turn;
      setState((old) => (old.is === 'on' ? { ...old, turn: after.turn } : old));
      if (after.readHz !== undefined) {
        turn.current = freshTurn;
        const answer = read.current(after.readHz);
        if (answer) void say(answer.sentence, answer.tone);
        return;
      }
      if (after.aloud) return void say(after.aloud, 'again');
    }
  };
  const start = async () => {
    if (open.current || state.is === 'asking') return;
    setState({ is: 'asking' });
    // Said within the tap: later a phone may refuse to speak by itself.
    void say(opening, 'heard');
    const opened = await openMicrophone(() => stop('lost'));
    if (!opened.ok) return stop(opened.reason);
    const { microphone } = opened;
    if (gone.current) return microphone.close();
    const stream = pluckStream(microphone.sampleRate, window.lowHz, window.highHz);
    stream.deafUntil(microphone.read().endS + SETTLE_S);
    open.current = { microphone, stream, timer: globalThis.setInterval(look, EVERY_MS) as unknown as number };
    setState({ is: 'on', filtered: microphone.filtered, turn: turn.current });
  };
  const { lowHz, highHz } = window;
  useEffect(() => {
    turn.current = freshTurn;
    open.current?.stream.turnTo(lowHz, highHz);
    setState((old) => (old.is === 'on' ? { ...old, turn: freshTurn } : old));
  }, [place, lowHz, highHz]);
  useEffect(() => {
    const hide = () => {
      if (document.visibilityState === 'hidden' && open.current) stop();
    };
    document.addEventListener('visibilitychange', hide);
    return () => {
      document.removeEventListener('visibilitychange', hide);
      gone.current = true;
      stop();
    };
  }, []);
  return { state, start, stop: () => stop() };
}
