import type { Between, Fastener, JointAbout, SealMark, Target } from '../../journal/entries.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { NO_MARK } from '../../standards/screws/propertyClasses.ts';
import { countWords, listWords, numberWords, quantityWords, remark, spanInWords } from '../phrases.ts';
import { clearedWords } from './clearedWords.ts';
import type { Names } from './names.ts';
import { called, type Sentences } from './sentences.ts';
import { betweenWords, outcomeWords, sourceWords, toolWords } from './tradeWords.ts';

/** What goes between, in one phrase. @example betweenText([{ kind: 'grease' }], names) //=> 'grease' */
export const betweenText = (between: readonly Between[], names: Names): string =>
  listWords(
    between.map(({ kind, partId, words }) => {
      const what = partId ? called(names).part(partId) : betweenWords[kind];
      return words?.trim() ? `${what}, ${words.trim()}` : what;
    }),
  );

/** @example fastenerText([{ thread: 'M5', count: 2, hand: 'right' }]) //=> '2 × M5' */
export const fastenerText = (fasteners: readonly Fastener[]): string =>
  listWords(
    fasteners.map((fastener) => {
      const { thread, count, hand, words, screw, propertyClass, female, onThread, grip, variant } = fastener;
      const left = hand === 'left' ? ', left-hand thread' : '';
      const known = [
        ...(screw && screw !== 'unknown' ? [screw] : []),
        ...(propertyClass
          ? [propertyClass === NO_MARK ? 'no mark on the head' : `class ${propertyClass}`]
          : []),
        ...(female && female !== 'unknown' ? [`in ${female}`] : []),
        ...(onThread ? [`on the thread ${onThread === 'none' ? 'nothing' : onThread}`] : []),
        ...(grip ? [`clamped length ${quantityWords(grip)}`] : []),
        ...(variant ? [variant] : []),
      ];
      return `${count} × ${thread}${left}${known.map((each) => `, ${each}`).join('')}${words?.trim() ? `, ${words.trim()}` : ''}`;
    }),
  );

/** What the stuff of a grade is called: a compound for bores, or threadlocker. */
export const lockerNoun = (grade: string): string =>
  grade.startsWith('retaining') ? 'Retaining compound' : 'Threadlocker';

/** A target with its source: who says so, of which part, and where it stands. */
export function targetText({ source, torque, upTo, partId, reference }: Target, names: Names): string {
  const figure = torque ? `${quantityWords(torque)}${upTo ? ` to ${quantityWords(upTo)}` : ''}, ` : '';
  const of = partId ? `, ${called(names).part(partId)}` : '';
  return `${figure}${sourceWords[source]}${of}${reference?.trim() ? `, ${reference.trim()}` : ''}`;
}

function jointAbout(
  { partIds, between, fasteners, targets, matters, note }: Partial<JointAbout>,
  names: Names,
) {
  return [
    partIds?.length ? remark('Parts', listWords(partIds.map(called(names).part))) : '',
    between?.length ? remark('Between', betweenText(between, names)) : '',
    fasteners?.length ? remark('Fasteners', fastenerText(fasteners)) : '',
    targets?.length ? remark('Target', targets.map((target) => targetText(target, names)).join('; ')) : '',
    matters === undefined ? '' : matters ? ' Safety-critical.' : ' Not safety-critical.',
    remark('Note', note),
  ].join('');
}

/** A mark of the sealing of a tyre, as the rest of a sentence. */
export function sealWords(mark: SealMark): string {
  const read = (reading: {
    reading?: {
      pressure?: Parameters<typeof quantityWords>[0];
      temperature?: Parameters<typeof quantityWords>[0];
    };
  }) => {
    const { pressure, temperature } = reading.reading ?? {};
    const at = temperature ? ` at ${quantityWords(temperature)}` : '';
    return pressure ? `${quantityWords(pressure)}${at}` : 'no pressure noted';
  };
  switch (mark.mark) {
    case 'seated': {
      const bead = { even: 'even all round', uneven: 'uneven', 'not-looked': 'not checked' }[mark.beadLine];
      return `the bead was seated ${mark.dry ? 'dry' : 'with sealant in'}, bead line ${bead}, ${read(mark)}`;
    }
    case 'dry-reading':
      return `without sealant the pressure was ${read(mark)}`;
    case 'sealant':
      return [
        mark.amount ? `${quantityWords(mark.amount)} of sealant went in` : 'sealant went in',
        ...(mark.sealantKind ? [mark.sealantKind] : []),
      ].join(', ');
    case 'spun-and-shaken':
      return 'the wheel was spun and shaken';
    case 'laid-left':
      return 'the wheel was laid on its left side';
    case 'laid-right':
      return 'the wheel was laid on its right side';
    case 'soaped': {
      const words = mark.words?.trim() ? `, ${mark.words.trim()}` : '';
      return mark.bubbles === 'none'
        ? `soapy water showed no bubbles${words}`
        : `soapy water showed bubbles at the ${mark.bubbles.replace('-', ' ')}${words}`;
    }
    case 'reading':
      return `the pressure was ${read(mark)}`;
    case 'burped':
      return `the tyre lost air at the bead${mark.words?.trim() ? `, ${mark.words.trim()}` : ''}`;
    case 'pumped':
      return `it was pumped to ${read(mark)}`;
    case 'let-down':
      return `air was let out, ${read(mark)}`;
    case 'riding':
      return `riding pressure set: ${read({ reading: mark })}`;
    case 'verdict': {
      const verdict = {
        holds: 'it holds',
        'still-sealing': 'it is still sealing',
        leaks: 'it leaks',
        'will-not-seat': 'the bead will not seat',
      }[mark.verdict];
      return `judged: ${verdict}${mark.words?.trim() ? `, ${mark.words.trim()}` : ''}`;
    }
  }
}

/** Joints: put together, tightened, locked, sealed, met again, and taken apart. */
export const sentencesOfJoints: Sentences<
  | 'joint-made'
  | 'joint-described'
  | 'joint-taken-apart'
  | 'torque-applied'
  | 'hand-tightened'
  | 'locker-applied'
  | 'seal-marked'
  | 'torque-found'
> = {
  'joint-made': (entry, names) =>
    `Joint added on ${called(names).bike(entry.bikeId)}: ${entry.name}, ${jointKindRow(entry.kind).label.toLowerCase()}.${jointAbout(entry, names)}`,
  'joint-described': (entry, names) =>
    `${called(names).joint(entry.jointId)} on ${called(names).bike(entry.bikeId)}: edited${entry.name === undefined ? '' : `, now called ${entry.name}`}.${jointAbout(entry, names)}${clearedWords(entry.cleared)}`,
  'joint-taken-apart': ({ jointId, bikeId, why }, names) =>
    `${called(names).joint(jointId)} on ${called(names).bike(bikeId)}: taken apart.${remark('Why', why)}`,
  'torque-applied': (
    { jointId, bikeId, applied, bolts, passes, tool, between, marked, despite, note },
    names,
  ) => {
    const name = called(names);
    const how = [
      bolts === 1 ? 'one bolt' : countWords(bolts, 'bolt'),
      passes === 1 ? 'in one pass' : `in ${countWords(passes, 'pass', 'passes')}`,
    ].join(' ');
    const laid = between === undefined ? '' : `, with ${betweenWords[between]} between`;
    return `${name.joint(jointId)} on ${name.bike(bikeId)}: tightened to ${quantityWords(applied)}, ${how}${laid}.${tool ? remark('Tool', toolWords(tool)) : ' Tool not named.'}${marked ? ' Paint mark added.' : ''}${remark('Loaded before the bond had set', despite)}${remark('Note', note)}`;
  },
  'hand-tightened': ({ jointId, bikeId, bolts, note }, names) =>
    `${called(names).joint(jointId)} on ${called(names).bike(bikeId)}: hand-tight, ${countWords(bolts, 'bolt')}; torque still to come.${remark('Note', note)}`,
  'locker-applied': (
    { jointId, bikeId, title, grade, surface, primer, temperature, gap, waitMs, note },
    names,
  ) =>
    `${lockerNoun(grade)}, ${grade.replaceAll('-', ' ')}, applied to ${jointId === undefined ? (title ?? 'a thread') : called(names).joint(jointId)} on ${called(names).bike(bikeId)}, surface ${surface.replaceAll('-', ' ')}, ${primer ? 'with' : 'without'} primer${gap ? `, gap ${quantityWords(gap)}` : ''}${temperature ? `, at ${quantityWords(temperature)}` : ''}; cures for ${spanInWords(waitMs)}.${remark('Note', note)}`,
  'seal-marked': ({ jointId, bikeId, mark, overLimit, note }, names) =>
    `${called(names).joint(jointId)} on ${called(names).bike(bikeId)}: ${sealWords(mark)}${overLimit ? ', above the limit, confirmed' : ''}.${remark('Note', note)}`,
  'torque-found': ({ jointId, bikeId, outcome, way, movedAt, turnedDeg, tool, note }, names) => {
    const looked = way === 'mark' ? 'by the paint mark' : 'with a wrench, tightening';
    const much = [
      ...(movedAt ? [`at ${quantityWords(movedAt)}`] : []),
      ...(turnedDeg === undefined ? [] : [`by ${numberWords(turnedDeg)}°`]),
    ];
    return `${called(names).joint(jointId)} on ${called(names).bike(bikeId)}: checked ${looked}, ${outcomeWords[outcome]}${much.length > 0 ? `, ${much.join(', ')}` : ''}.${tool ? remark('Tool', toolWords(tool)) : ''}${remark('Note', note)}`;
  },
};
