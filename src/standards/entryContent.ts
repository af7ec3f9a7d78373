import type { Sourced } from './known.ts';

/** What a rule asks a maintenance record to hold, and where ours holds it. */
export interface EntryContentRow extends Sourced {
  readonly id: string;
  /** The paragraph that asks. */
  readonly rule: string;
  /** What it asks for. */
  readonly asked: string;
  /** Entry types and fields in which the journal holds it. */
  readonly held: string;
  /** Caption under which it stands on the as-built sheet. */
  readonly printedAs: string;
}

const row = (
  id: string,
  rule: string,
  asked: string,
  held: string,
  printedAs: string,
  known: Sourced['known'],
  source = rule,
): EntryContentRow => ({ id, rule, asked, held, printedAs, source, known });

const owner = '14 CFR 91.417(a)(1)';
const lasting = '14 CFR 91.417(a)(2)';
const copy = (rule: string) => `${rule}, public copy`;

/**
 * The content that aviation rules ask of a maintenance and an inspection record, taken as a yardstick; no
 * conformity is claimed. `known` says how the wording of the rule is known.
 */
export const entryContent: readonly EntryContentRow[] = [
  row(
    'work',
    '14 CFR 43.9(a)',
    'description of the work',
    'torque-applied, hand-tightened, part-changed',
    'Work done',
    'memory',
  ),
  row(
    'work-date',
    '14 CFR 43.9(a)',
    'date the work was completed',
    'happenedAtMs of each entry',
    'Done on',
    'memory',
  ),
  row(
    'worker',
    '14 CFR 43.9(a)',
    'name of the person who did the work',
    'by of every entry, taken from the settings of that day',
    'Done by',
    'memory',
  ),
  row(
    'approval',
    '14 CFR 43.9(a)',
    'signature, which approves only the work described',
    'bike-released: by, covers',
    'This covers',
    'seen',
    copy('14 CFR 43.9'),
  ),
  row(
    'data',
    '14 CFR 43.9(a)',
    'reference to the data used',
    'joint-made: targets with source and reference',
    'Data used',
    'memory',
  ),
  row(
    'inspection',
    '14 CFR 43.11(a)',
    'type and extent of the inspection',
    'ride-check-confirmed: groupId, items',
    'Looked over',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'inspection-date',
    '14 CFR 43.11(a)',
    'date of the inspection',
    'bike-released: happenedAtMs',
    'Signed on',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'time-then',
    '14 CFR 43.11(a)',
    'total time in service at the inspection',
    'ride-logged until then',
    'Total time then',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'signer',
    '14 CFR 43.11(a)',
    'signature of the person who approves or disapproves',
    'bike-released: by',
    'Signed by',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'statement',
    '14 CFR 43.11(a)',
    'a statement that passes or fails it',
    'bike-released: statement',
    'Statement',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'discrepancies',
    '14 CFR 43.11(b)',
    'dated list of what keeps it from passing, and of what does not work',
    'bike-released: open',
    'Open then',
    'seen',
    copy('14 CFR 43.11'),
  ),
  row(
    'owner-work',
    owner,
    'description of the work performed',
    'torque-applied, hand-tightened, part-changed',
    'Work done',
    'seen',
    copy(owner),
  ),
  row(
    'owner-date',
    owner,
    'date of completion',
    'happenedAtMs of each entry',
    'Done on',
    'seen',
    copy(owner),
  ),
  row(
    'owner-signature',
    owner,
    'signature of the person who returned it to service',
    'bike-released: by',
    'Signed by',
    'seen',
    copy(owner),
  ),
  row(
    'total-time',
    lasting,
    'total time in service',
    'ride-logged: minutes, km',
    'Total time',
    'seen',
    copy(lasting),
  ),
  row(
    'life',
    lasting,
    'current status of parts with a limited life',
    'part-added: kmBefore, unknown',
    'Ridden before',
    'seen',
    copy(lasting),
  ),
  row(
    'inspection-status',
    lasting,
    'current inspection status and what is next due',
    'recheck-set and its answers',
    'Next check',
    'seen',
    copy(lasting),
  ),
  row(
    'alterations',
    lasting,
    'copies of the records of major alterations',
    'part-changed',
    'Changed for good',
    'memory',
  ),
];
