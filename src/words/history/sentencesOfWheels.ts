import type { WheelReadings, WheelSideAbout } from '../../journal/entries.ts';
import { listWords, quantityWords, remark } from '../phrases.ts';
import { crossingWords } from '../wheel/crossingWords.ts';
import { clearedWords } from './clearedWords.ts';
import { called, type Sentences } from './sentences.ts';

/** When a set of readings was taken. */
const momentWords: Record<WheelReadings['moment'], string> = {
  building: 'while building',
  before: 'before truing',
  after: 'after truing',
  'stress-relieved': 'after stress relief',
  'first-ride': 'after the first ride',
  later: 'later on',
};

const sideWords = (side: string, { spokes, crosses }: WheelSideAbout): string =>
  `${spokes} spokes ${crossingWords(crosses)} ${side}`;

/** How many spokes were read. */
const readCount = (read: readonly (number | null)[]): string =>
  `${read.filter((one) => one !== null).length} of ${read.length} spokes`;

/** Wheels: built, described, read and taken apart. */
export const sentencesOfWheels: Sentences<
  'wheel-made' | 'wheel-described' | 'wheel-read' | 'wheel-taken-apart'
> = {
  'wheel-made': ({ name, bikeId, leftSide, driveSide, partIds, note }, names) => {
    const on = bikeId ? ` on ${called(names).bike(bikeId)}` : '';
    const parts = partIds.length > 0 ? `, of ${listWords(partIds.map(called(names).part))}` : '';
    return `Wheel added${on}: ${name}, ${sideWords('left', leftSide)}, ${sideWords('on the drive side', driveSide)}${parts}.${remark('Note', note)}`;
  },
  'wheel-described': ({ wheelId, name, leftSide, driveSide, erds, target, note, cleared }, names) => {
    const changes = [
      ...(name === undefined ? [] : [`now called ${name}`]),
      ...(leftSide ? [sideWords('left', leftSide)] : []),
      ...(driveSide ? [sideWords('on the drive side', driveSide)] : []),
      ...(erds?.length ? [`effective rim diameter ${listWords(erds.map(quantityWords))}`] : []),
      ...(target ? [`target ${quantityWords(target)}`] : []),
    ];
    return `${called(names).wheel(wheelId)} edited${changes.length > 0 ? `: ${listWords(changes)}` : ''}.${remark('Note', note)}${clearedWords(cleared)}`;
  },
  'wheel-read': ({ wheelId, moment, tyre, read, lateral, radial, dish, note }, names) => {
    const run = [
      ...(lateral ? [`sideways run-out ${quantityWords(lateral)}`] : []),
      ...(radial ? [`up and down ${quantityWords(radial)}`] : []),
      ...(dish ? [`dish ${quantityWords(dish)}`] : []),
    ];
    return `${called(names).wheel(wheelId)} measured ${momentWords[moment]}, tyre ${tyre}: ${readCount(read)}${run.length > 0 ? `, ${run.join(', ')}` : ''}.${remark('Note', note)}`;
  },
  'wheel-taken-apart': ({ wheelId, why }, names) =>
    `${called(names).wheel(wheelId)} taken apart.${remark('Why', why)}`,
};
