import type { Command } from '../../../src/journal/commands.ts';
import type { Entry, Id } from '../../../src/journal/entries.ts';
import type { DueLine } from '../../../src/logbook.ts';
import { type Act, filledIn, NotGiven, type Written } from './acts.ts';
import { compareAsBuilt, compareHistories, compareViews, type Mismatch } from './compare.ts';
import { demoMismatches } from './demoRemoval.ts';
import type { Dice } from './dice.ts';
import { askedAs, type CarriedOut, doubleTap, foreseenRefusals, mustBeDone } from './foreseen.ts';
import { House } from './house.ts';
import { type ModelAnswers, modelAnswers } from './modelAnswers.ts';
import { unpaid } from './owed.ts';
import { field } from './reading.ts';

/** Noon on a day in spring. */
const START_MS = Date.UTC(2026, 4, 3, 12);

/** What a sequence came to. */
export interface Played {
  acts: Act[];
  /** Commands asked, and those that were carried out. */
  commands: number;
  done: number;
  mismatches: (Mismatch & { no: number })[];
  /** What each act gave, for reading a failure. */
  log: string[];
}

/** Gives the next acts, or none at the end. */
export type Next = (at: {
  model: ModelAnswers;
  given: ReadonlyMap<number, Entry[]>;
  last: Written | undefined;
  acts: number;
}) => Act[];

interface Options {
  /** Stops at the first act that shows a mismatch. */
  stopAtFirst?: boolean;
  /** Throws the instants to look back to, and the order in which another phone gets the entries. */
  dice: Dice;
}

type Ran = { entries: Entry[] } | { refused: string; about?: string };

/** Plays a sequence on one phone and says where the logbook and the model differ. */
export async function play(next: Next, { stopAtFirst = true, dice }: Options): Promise<Played> {
  const house = await House.open(START_MS);
  const played: Played = { acts: [], commands: 0, done: 0, mismatches: [], log: [] };
  const given = new Map<number, Entry[]>();
  const carriedOut: CarriedOut[] = [];
  const announced = new Set<string>();
  let written = new Map<Id, string>();
  let last: Written | undefined;
  let no = 0;

  const differ = (mismatches: readonly Mismatch[]) =>
    played.mismatches.push(...mismatches.map((mismatch) => ({ ...mismatch, no })));
  const mustNot = (what: string, bad: boolean, found: unknown = true) => {
    if (bad) differ([{ what, expected: 'no', found }]);
  };

  /** [J2] The journal as it stands; no line that was there has changed or gone. */
  async function journal(): Promise<Entry[]> {
    const all = await house.entries();
    const lines = new Map(all.map((entry) => [entry.id, JSON.stringify(entry)]));
    mustNot('J2 two lines with one id', lines.size !== all.length);
    for (const [id, line] of written)
      mustNot(`J2 line ${id} is as it was written`, lines.get(id) !== line, lines.get(id));
    written = lines;
    return all;
  }

  function heard(lines: readonly DueLine[]) {
    for (const line of lines) {
      // A timer that was moved along with the clock ends at the same instant as before.
      const key = `${line.is} ${line.id}@${line.dueAtMs - (line.movedMs ?? 0)}`;
      mustNot(`R1 ${key} is announced once`, announced.has(key));
      announced.add(key);
    }
  }

  async function look(at: House = house): Promise<void> {
    const all = await at.entries();
    const model = modelAnswers(all);
    const named = {
      bikeIds: new Set(all.flatMap((entry) => (field(entry, 'bikeId') as Id | undefined) ?? [])),
      partIds: new Set(all.flatMap((entry) => (field(entry, 'partId') as Id | undefined) ?? [])),
    };
    for (const tab of at.tabs) differ(await compareViews(tab, model, named));
    differ(await compareHistories(at.tab(0), all, dice));
    const entry = dice.pick(all);
    const bikeId = dice.pick([...model.bikes.keys()]);
    if (!entry || bikeId === undefined) return;
    const atMs = entry.happenedAtMs + dice.below(3) - 1;
    differ(await compareAsBuilt(at.tab(0), modelAnswers(all, atMs), bikeId, atMs));
  }

  function filled(command: Written): Command | undefined {
    try {
      return filledIn(command, given, house.clock.nowMs);
    } catch (thrown) {
      if (thrown instanceof NotGiven) return undefined;
      throw thrown;
    }
  }

  function took(commands: readonly Command[], result: Ran, nowMs: number) {
    played.commands += commands.length;
    const what = commands.map((command) => JSON.stringify(command)).join(' + ');
    const came =
      'refused' in result
        ? `refused ${result.refused}`
        : result.entries.map((entry) => JSON.stringify(entry)).join('\n      ');
    played.log.push(`${no}. at ${nowMs}: ${what}\n   => ${came}`);
    if ('refused' in result) return;
    played.done += commands.length;
    given.set(no, [...(given.get(no) ?? []), ...result.entries]);
    const entryIds = result.entries.map(({ id }) => id);
    const [only, ...more] = commands;
    carriedOut.push({
      asked: askedAs(only && more.length === 0 ? only : commands),
      writtenAtMs: nowMs,
      entryIds,
    });
  }

  async function run(tab: 0 | 1, written: Written): Promise<void> {
    const command = filled(written);
    if (!command) return;
    const { nowMs } = house.clock;
    const all = await journal();
    const before = modelAnswers(all);
    const at = { model: before, all, nowMs, carriedOut };
    const foreseen = foreseenRefusals(command, at);
    const tapped = doubleTap(command, at);
    const must = mustBeDone(command, at);
    const result: Ran = await house.tab(tab).run(command);
    const later = await journal();
    took([command], result, nowMs);
    last = written;
    if ('refused' in result) {
      mustNot('J4 a refused command writes nothing', later.length !== all.length, later.length - all.length);
      mustNot(`${command.type} can be done`, must, result.refused);
      mustNot('J11 no double tap', result.refused === 'double-tap' && tapped === 'no', result.refused);
      return;
    }
    mustNot(`${command.type} is refused: ${foreseen.join(', ')}`, foreseen.length > 0, 'carried out');
    const after = modelAnswers(later);
    differ(unpaid({ command, gave: result.entries, before, after, all, nowMs }));
    mustNot(
      'J1 what was given is what was written',
      later.length !== all.length + result.entries.length,
      later.length - all.length,
    );
  }

  async function runList(tab: 0 | 1, list: readonly Written[]): Promise<void> {
    const commands = list.flatMap((command) => filled(command) ?? []);
    if (commands.length < 2) return;
    const { nowMs } = house.clock;
    const all = await journal();
    const asOne = house.tab(tab).run as unknown as (commands: Command[]) => Promise<Ran & { at?: number }>;
    const result = await asOne(commands);
    const later = await journal();
    const at = { model: modelAnswers(all), all, nowMs, carriedOut };
    const first = commands[0]
      ? foreseenRefusals(commands[0], at).filter((rule) => !rule.startsWith('J11'))
      : [];
    const foreseen = [...first, ...(doubleTap(commands, at) === 'yes' ? ['J11 double-tap'] : [])];
    took(commands, result, nowMs);
    const added = later.length - all.length;
    if ('refused' in result) {
      mustNot('J13 of a refused list nothing is written', added !== 0, added);
      const at = result.at ?? -1;
      mustNot('J13 a refused list says which command', at < 0 || at >= commands.length, at);
      return;
    }
    mustNot(`a list is refused: ${foreseen.join(', ')}`, foreseen.length > 0, 'carried out');
    mustNot('J13 a list writes all of it', added !== result.entries.length, added);
  }

  async function race(act: Extract<Act, { act: 'race' }>): Promise<void> {
    const { nowMs } = house.clock;
    await journal();
    const asked = act.commands.flatMap(({ tab, command }) => {
      const one = filled(command);
      return one ? [{ tab, command: one }] : [];
    });
    const others: Promise<void>[] = [];
    if (act.claims) for (const who of [...house.tabs, house.worker]) others.push(who.claimDue().then(heard));
    if (act.rebuild) others.push(house.rebuildBeside());
    const results = await Promise.all(
      asked.map(({ tab, command }) => house.tab(tab).run(command) as Promise<Ran>),
    );
    await Promise.all(others);
    await journal();
    for (const [place, { command }] of asked.entries()) {
      const result = results[place];
      if (result) took([command], result, nowMs);
    }
    const done = asked.filter((_one, place) => 'entries' in (results[place] ?? {}));
    for (const { command } of done) {
      const equal = done.filter((other) => askedAs(other.command) === askedAs(command));
      mustNot(`J11 ${command.type} at the same instant is done once`, equal.length > 1, equal.length);
    }
  }

  async function claim(who: Extract<Act, { act: 'claim' }>['who']): Promise<void> {
    const [first, second] = house.tabs;
    const claimants = {
      'first-tab': [first],
      'second-tab': [second],
      worker: [house.worker],
      all: [first, second, house.worker],
    }[who];
    const lines = await Promise.all(claimants.map((one) => one?.claimDue() ?? []));
    heard(lines.flat());
    const model = modelAnswers(await journal());
    const { nowMs } = house.clock;
    const overdue = [
      ...[...model.waits].flatMap(([id, { running, dueAtMs, movedMs }]) =>
        running ? [{ key: `wait ${id}`, dueAtMs, movedMs }] : [],
      ),
      // [R12] The checks of a bike put away are not announced.
      ...[...model.rechecks].flatMap(([id, { bikeId, open, unsureDue, dueAtMs }]) =>
        open && !unsureDue && !model.bikes.get(bikeId)?.putAway
          ? [{ key: `recheck ${id}`, dueAtMs, movedMs: 0 }]
          : [],
      ),
      ...[...model.defects].flatMap(([id, { bikeId, open, dueAtMs }]) =>
        open && !model.bikes.get(bikeId)?.putAway ? [{ key: `defect ${id}`, dueAtMs, movedMs: 0 }] : [],
      ),
    ];
    for (const { key, dueAtMs, movedMs } of overdue) {
      if (dueAtMs === undefined || dueAtMs > nowMs) continue;
      const known = announced.has(`${key}@${dueAtMs - movedMs}`);
      mustNot(`R1 ${key}, due ${dueAtMs}, is announced`, !known, 'not');
    }
  }

  async function removeDemo(tab: 0 | 1): Promise<void> {
    const all = await journal();
    const result = await house.tab(tab).removeDemo();
    const later = await house.entries();
    written = new Map();
    await journal();
    played.log.push(`${no}. demo removal => ${JSON.stringify(result)}`);
    differ(demoMismatches(all, result, later));
  }

  async function perform(act: Act): Promise<void> {
    house.clock.nowMs += act.afterMs;
    switch (act.act) {
      case 'run':
        return run(act.tab, act.command);
      case 'list':
        return runList(act.tab, act.commands);
      case 'race':
        await race(act);
        return look();
      case 'set-clock':
        house.clock.nowMs += act.byMs;
        return;
      case 'claim':
        return claim(act.who);
      case 'remove-demo':
        await removeDemo(act.tab);
        return look();
      case 'rebuild':
        await house.rebuild(act.pages);
        return look();
      case 'open-again':
        return house.openTab(act.tab);
      case 'look':
        return look();
    }
  }

  /** Looks at the end: as it is, after making the rows anew, and on a phone that got the entries in another order. */
  async function endings(): Promise<void> {
    await look();
    if (played.mismatches.length > 0 && stopAtFirst) return;
    await house.rebuild(1);
    await look();
    if (played.mismatches.length > 0 && stopAtFirst) return;
    const other = await house.shuffled((entries) => dice.shuffled(entries));
    await look(other);
    other.close();
  }

  try {
    for (;;) {
      const acts = next({ model: modelAnswers(await house.entries()), given, last, acts: no });
      if (acts.length === 0) break;
      for (const act of acts) {
        ({ no } = act);
        played.acts.push(act);
        await perform(act);
        if (stopAtFirst && played.mismatches.length > 0) return played;
      }
    }
    no += 1;
    await endings();
  } catch (thrown) {
    const why = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
    differ([{ what: 'nothing is thrown', expected: 'nothing', found: why }]);
  } finally {
    house.close();
  }
  return played;
}
