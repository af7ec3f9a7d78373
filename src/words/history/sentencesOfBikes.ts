import { notFitted } from '../../standards/checks/notFitted.ts';
import { countWords, dayWords, listWords, numberWords, remark } from '../phrases.ts';
import { called, type Sentences } from './sentences.ts';

const statements = {
  'first-ride': 'released for a first short ride',
  ride: 'released to ride',
  'not-to-ride': 'signed as NOT to be ridden',
} as const;

/** Starting, checking, releasing and riding a bike, and what was found wrong with it. */
export const sentencesOfBikes: Sentences<
  | 'bike-started'
  | 'bike-described'
  | 'bike-put-away'
  | 'bike-taken-out'
  | 'defect-found'
  | 'defect-closed'
  | 'ride-check-confirmed'
  | 'bike-released'
  | 'release-withdrawn'
  | 'ride-logged'
  | 'finding-accepted'
  | 'finding-noted'
> = {
  'bike-started': ({ name, about, demo }) =>
    `${name} created${demo ? ', a made-up example' : ''}.${remark('About it', about)}`,
  'bike-described': ({ bikeId, name, about, photoId }, names) => {
    const renamed = name === undefined ? [] : [`now called ${name}`];
    const shown = photoId === undefined ? [] : ['new photo'];
    const changes = listWords([...renamed, ...shown]);
    const bike = called(names).bike(bikeId);
    return `${bike} edited${changes && `: ${changes}`}.${remark('About it', about)}`;
  },
  'bike-put-away': ({ bikeId, why }, names) => `${called(names).bike(bikeId)} archived.${remark('Why', why)}`,
  'bike-taken-out': ({ bikeId }, names) => `${called(names).bike(bikeId)} brought back from the archive.`,
  'defect-found': (entry, names) => {
    const { bikeId, jointId, partId, words, decision, untilMs, untilKm, restriction, zone } = entry;
    const name = called(names);
    const where = jointId ? ` at ${name.joint(jointId)}` : partId ? ` on ${name.part(partId)}` : '';
    const limits = [
      ...(untilMs === undefined ? [] : [`until ${dayWords(untilMs, zone)}`]),
      ...(untilKm === undefined ? [] : [`up to ${countWords(untilKm, 'km', 'km')}`]),
    ];
    const ruled =
      decision === 'do-not-ride'
        ? 'Do not ride'
        : `May be ridden within limits${limits.length > 0 ? `, ${limits.join(' or ')}` : ''}`;
    return `Problem reported on ${name.bike(bikeId)}${where}.${remark('What', words)} ${ruled}.${remark('Restriction', restriction)}`;
  },
  'defect-closed': ({ defectId, bikeId, how }, names) => {
    const name = called(names);
    return `${name.bike(bikeId)}: ${name.defect(defectId)} fixed.${remark('How', how)}`;
  },
  'ride-check-confirmed': ({ bikeId, groupId, items }, names) => {
    const found = items.filter(({ ok, absent }) => !ok && !absent);
    const absent = items.filter((item) => item.absent);
    const without =
      absent.length > 0
        ? remark('Not fitted', absent.map(({ itemId }) => notFitted[itemId]?.thing ?? itemId).join('; '))
        : '';
    const looked = `${called(names).bike(bikeId)}: pre-ride check, ${groupId.replaceAll('-', ' ')}`;
    const words = found.map((item) => item.words?.trim() || item.itemId.replaceAll('-', ' '));
    return found.length === 0
      ? `${looked}: ${countWords(items.length - absent.length, 'point')} OK.${without}`
      : `${looked}: ${found.length} of ${countWords(items.length - absent.length, 'point')} not OK.${remark('Found', words.join('; '))}${without}`;
  },
  'bike-released': ({ bikeId, statement, covers, by, open, restrictions }, names) => {
    const items =
      open.length === 0 ? ' Nothing was open.' : remark('Open', open.map(({ words }) => words).join('; '));
    const signed = by.trim() === '' ? '' : ` by ${by.trim()}`;
    return `${called(names).bike(bikeId)} was ${statements[statement]}${signed}.${remark('This covers', covers)}${items}${remark('Restrictions', restrictions)}`;
  },
  'release-withdrawn': ({ bikeId, why }, names) =>
    `The release of ${called(names).bike(bikeId)} was withdrawn.${remark('Why', why)}`,
  'ride-logged': ({ bikeId, minutes, km, noticed, first }, names) => {
    const spans = [
      ...(km === undefined ? [] : [`${numberWords(km)} km`]),
      ...(minutes === undefined ? [] : [countWords(minutes, 'minute')]),
    ];
    const which = first ? 'for the first time, ' : '';
    return `${called(names).bike(bikeId)} was ridden ${which}${spans.join(' in ') || 'distance not recorded'}.${remark('Noticed', noticed)}`;
  },
  'finding-accepted': ({ bikeId, words }, names) =>
    `Fit check on ${called(names).bike(bikeId)}: finding accepted.${remark('Finding', words)}`,
  'finding-noted': ({ bikeId, words, outcome }, names) => {
    const judged = {
      'not-known': 'cannot be judged yet',
      'does-not-fit': 'does not fit',
      'one-way-only': 'fits only with a permanent change',
    }[outcome];
    return `Fit check on ${called(names).bike(bikeId)}: finding noted as open, ${judged}.${remark('Finding', words)}`;
  },
};
