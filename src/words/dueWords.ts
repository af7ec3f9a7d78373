import type { Duty } from '../journal/answers.ts';
import { waitWords } from './waitWords.ts';

/**
 * One duty in a line: what waits with its kind, a problem or a tool as such, a re-check by its title.
 * @example dueWords({ is: 'wait', kind: 'seal', title: 'Rear bead' }) //=> 'Seal: Rear bead'
 */
export function dueWords({ is, kind, title }: Pick<Duty, 'is' | 'kind' | 'title'>): string {
  if (is === 'wait') return waitWords(kind, title);
  if (is === 'tool') return `Check the tool: ${title}`;
  return is === 'defect' ? `Problem: ${title}` : title;
}
