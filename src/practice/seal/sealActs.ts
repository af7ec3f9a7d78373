import type { SealMark } from '../../journal/entries.ts';
import type { SealNext } from './sealOrder.ts';

export interface SealAct {
  /** What the big button says. */
  words: string;
  mark: SealMark['mark'];
  under?: string;
}

/** The big button for the work suggested next. */
export const sealActs: Record<SealNext, SealAct> = {
  seated: { words: 'Bead seated', mark: 'seated', under: 'then check the bead line' },
  sealant: { words: 'Sealant added', mark: 'sealant', under: 'Asks for kind and amount' },
  'spun-and-shaken': { words: 'Spun and shaken', mark: 'spun-and-shaken' },
  'laid-left': { words: 'Lies on its left', mark: 'laid-left', under: 'Look again in 30 min' },
  'laid-right': { words: 'Lies on its right', mark: 'laid-right', under: 'Look again in 30 min' },
  soaped: { words: 'Soap test', mark: 'soaped', under: 'Asks where bubbles are' },
  reading: { words: 'Type the pressure', mark: 'reading' },
  verdict: { words: 'Judge it', mark: 'verdict' },
  wait: { words: 'Read it early', mark: 'reading' },
  settled: { words: 'Read the pressure', mark: 'reading' },
};

/** Marks that are asked about before they are logged, and in which way; the others are logged at a tap. */
export const askedBy: Record<SealMark['mark'], 'pad' | 'page' | 'sheet' | 'tap'> = {
  seated: 'sheet',
  'dry-reading': 'pad',
  sealant: 'page',
  'spun-and-shaken': 'tap',
  'laid-left': 'tap',
  'laid-right': 'tap',
  soaped: 'sheet',
  reading: 'pad',
  burped: 'tap',
  pumped: 'pad',
  'let-down': 'pad',
  riding: 'pad',
  verdict: 'sheet',
};
