import { type PreloadUse, preloadUse, proofLoadN } from '../../mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../mechanics/screws/threadGeometry.ts';
import { useWorking } from '../../mechanics/screws/torqueWorkings.ts';
import { given } from '../../mechanics/working.ts';
import {
  NO_MARK,
  type PropertyClassRow,
  proofOf,
  propertyClasses,
  unmarkedClasses,
} from '../../standards/screws/propertyClasses.ts';
import type { ScrewFacts } from './jointFacts.ts';
import {
  bandText,
  type LineVerdict,
  type MissingKey,
  missing,
  type Saying,
  type WorkingLine,
  weakest,
  withoutDocument,
} from './line.ts';
import type { JointPreload } from './preload.ts';

const useWords = {
  low: { tone: 'care', word: 'Low: relies on friction' },
  ordinary: { tone: 'good', word: 'Ordinary' },
  high: { tone: 'care', word: 'High' },
  'near-proof': { tone: 'care', word: 'Near its proof load' },
  'partly-beyond': { tone: 'care', word: 'Partly beyond its proof load' },
  'beyond-proof': { tone: 'stop', word: 'Mostly beyond its proof load' },
} as const;

type Head = 'marked' | 'unmarked' | 'not-looked' | 'contradicts';

/** What can be said of a screw by its head: a class, no mark at all, not looked at yet, or a mark of another material. */
function classesOf({ screw, propertyClass }: ScrewFacts): { rows: readonly PropertyClassRow[]; head: Head } {
  const row = propertyClasses.find((each) => each.propertyClass === propertyClass);
  if (row) return { rows: [row], head: row.screw === screw ? 'marked' : 'contradicts' };
  const rows = unmarkedClasses(screw ?? 'unknown');
  return { rows, head: propertyClass === NO_MARK ? 'unmarked' : 'not-looked' };
}

const guesses = {
  unmarked: { tone: 'care', word: 'No grade on it: its class is a guess' },
  'not-looked': { tone: 'care', word: 'Grade on the head not known' },
  contradicts: { tone: 'care', word: 'Grade and material disagree' },
} as const;

/** A screw without a known class is never called good, nor one by figures no document prints; red stays for one that was looked at. */
function useVerdict(use: PreloadUse['verdict'], head: Head, unprinted: boolean): LineVerdict {
  const words = useWords[use];
  if (head === 'marked') return unprinted ? withoutDocument(words) : words;
  if (head === 'contradicts' && words.tone === 'stop') return words;
  return head === 'unmarked' && words.tone !== 'good' ? words : guesses[head];
}

const lacks: Partial<Record<Head, MissingKey[]>> = {
  'not-looked': ['property-class'],
  contradicts: ['screw', 'property-class'],
};

/** How far up its proof load a screw may be. */
export function useLine(preload: JointPreload, say: Saying): WorkingLine | undefined {
  if (!preload.ok) return undefined;
  const { preloadN, thread, screw, working, unprinted } = preload;
  const { rows, head } = classesOf(screw);
  const weak = rows[0];
  const strong = rows.at(-1);
  if (!weak || !strong) return undefined;
  const areaMm2 = stressAreaMm2(thread);
  // The weakest class the screw may be of ends the band, the strongest begins it.
  const least = preloadUse(preloadN, proofLoadN(areaMm2, proofOf(strong)));
  const most = preloadUse(preloadN, proofLoadN(areaMm2, proofOf(weak)));
  const share = { lo: least.share.lo, mid: (least.share.mid + most.share.mid) / 2, hi: most.share.hi };
  const percent = bandText({ lo: share.lo * 100, mid: share.mid * 100, hi: share.hi * 100 }, say, 0);
  const names = [...new Set([weak.propertyClass, strong.propertyClass])].join(' to ');
  const taken =
    head === 'marked' || head === 'contradicts'
      ? ''
      : `, if it is of class ${names}, as a screw without a mark may be`;
  const beyond = least.beyond > 0 ? `; ${say.number(least.beyond * 100, 0)} % of that band is beyond it` : '';
  return {
    id: 'proof',
    label: 'Share of the proof load',
    text: `${percent} %${taken}${beyond}`,
    verdict: useVerdict(least.verdict, head, unprinted || rows.some(({ known }) => known === 'memory')),
    working: {
      ...useWorking(preloadN, proofLoadN(areaMm2, proofOf(weak))),
      result: share,
      formula: 'F / (As·Sp)',
      inputs: [
        given('F', preloadN, 'N'),
        given('As', areaMm2, 'mm²'),
        ...rows.map((row) =>
          given(`Sp ${row.propertyClass}${row.proofMPa ? '' : ', its yield strength'}`, proofOf(row), 'MPa'),
        ),
      ],
      source: `ISO 898-1 proof loads, public copy. Sp: ${weak.source}`,
      known: weakest(working.known, ...rows.map(({ known }) => known), thread.known),
    },
    ...(lacks[head] ? { missing: lacks[head].map(missing) } : {}),
  };
}
