import type { DueLine } from '../journal/answers.ts';
import { waitWords } from './waitWords.ts';

/**
 * One duty in a line: what waits with its kind, a defect as one, a re-check by its title.
 * @example dueWords({ is: 'wait', kind: 'seal', title: 'Rear bead' }) //=> 'Seal: Rear bead'
 */
export function dueWords({ is, kind, title }: Pick<DueLine, 'is' | 'kind' | 'title'>): string {
  if (is === 'wait') return waitWords(kind, title);
  return is === 'defect' ? `Defect: ${title}` : title;
}
