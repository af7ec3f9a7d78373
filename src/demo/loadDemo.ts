import type { Logbook } from '../logbook.ts';
import { demoLines } from './demoLines.ts';

/**
 * Puts the two invented bikes into the logbook, through the same door and the same checks as anything else, and in
 * one transaction: all of it is there, or none.
 * @throws Error when a line is refused
 */
export async function loadDemo(logbook: Logbook): Promise<void> {
  const lines = demoLines(logbook.now());
  const result = await logbook.runStory(lines);
  if (!('refused' in result)) return;
  const { refused, about = '', at = 0 } = result;
  throw new Error(`demo: ${lines[at]?.command.type} refused, ${refused} ${about}`);
}
