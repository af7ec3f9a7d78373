import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Entry, Id } from '../../journal/entries.ts';
import type { Logbook } from '../../logbook.ts';
import { entryAbout } from '../../words/history/entryAbout.ts';
import { type Names, partCalled } from '../../words/history/names.ts';
import { useLogbook } from '../door.tsx';

type NamedKind = 'bike' | 'part' | 'joint' | 'step' | 'wait' | 'recheck' | 'defect' | 'tool' | 'wheel';
type NameTable = Record<NamedKind, Map<Id, string>>;

const emptyTable = (): NameTable => ({
  bike: new Map(),
  part: new Map(),
  joint: new Map(),
  step: new Map(),
  wait: new Map(),
  recheck: new Map(),
  defect: new Map(),
  tool: new Map(),
  wheel: new Map(),
});

/** Everything a bike knows by name, in one reading. */
async function namesOfBike(logbook: Logbook, bikeId: Id, table: NameTable): Promise<void> {
  const seen = await logbook.read('bike', { bikeId });
  if (!seen) return;
  table.bike.set(bikeId, seen.bike.name);
  for (const { partId, name, label } of seen.parts) table.part.set(partId, partCalled(name, label));
  for (const { jointId, name } of seen.joints) table.joint.set(jointId, name);
  for (const { stepId, title } of seen.steps) table.step.set(stepId, title);
  for (const { waitId, title } of seen.waits) table.wait.set(waitId, title);
  for (const { recheckId, title } of seen.rechecks) table.recheck.set(recheckId, title);
  for (const { defectId, words } of seen.defects) table.defect.set(defectId, words);
}

/** Names that stand in the entries themselves: of what has long been dropped or closed. */
function namesInside(entries: readonly Entry[], table: NameTable): void {
  const note = (kind: NamedKind, id: Id, name: string) => {
    if (!table[kind].has(id)) table[kind].set(id, name);
  };
  for (const entry of entries) {
    if (entry.type === 'step-added') note('step', entry.stepId, entry.title);
    if (entry.type === 'wait-started') note('wait', entry.waitId, entry.title);
    if (entry.type === 'recheck-set') note('recheck', entry.recheckId, entry.title);
    if (entry.type === 'defect-found') note('defect', entry.defectId, entry.words);
    if (entry.type === 'joint-made') note('joint', entry.jointId, entry.name);
    if (entry.type === 'wheel-made') note('wheel', entry.wheelId, entry.name);
    if (entry.type === 'part-added') note('part', entry.partId, partCalled(entry.name, entry.label));
  }
}

const countNames = (table: NameTable): number =>
  Object.values(table).reduce((sum, names) => sum + names.size, 0);

interface AskedNames {
  bikes: readonly Id[];
  parts: readonly Id[];
  joints: readonly Id[];
  /** Tools and wheels, all of them. */
  tools: boolean;
}

/** Reads the names that are asked for; what a bike knows by name is not asked for again. */
async function readInto(table: NameTable, logbook: Logbook, asked: AskedNames): Promise<void> {
  await Promise.all(asked.bikes.map((bikeId) => namesOfBike(logbook, bikeId, table)));
  if (asked.tools) {
    for (const { toolId, name } of await logbook.read('tools', {})) table.tool.set(toolId, name);
    for (const { wheelId, name } of await logbook.read('wheels', {})) table.wheel.set(wheelId, name);
  }
  await Promise.all([
    ...asked.parts
      .filter((id) => !table.part.has(id))
      .map(async (partId) => {
        const seen = await logbook.read('part', { partId });
        if (seen) table.part.set(partId, partCalled(seen.part.name, seen.part.label));
      }),
    ...asked.joints
      .filter((id) => !table.joint.has(id))
      .map(async (jointId) => {
        const seen = await logbook.read('joint', { jointId });
        if (seen) table.joint.set(jointId, seen.joint.name);
      }),
  ]);
}

function namesIn(table: NameTable): Names {
  const look = (kind: NamedKind) => (id: Id) => table[kind].get(id);
  return {
    bike: look('bike'),
    part: look('part'),
    joint: look('joint'),
    step: look('step'),
    wait: look('wait'),
    recheck: look('recheck'),
    defect: look('defect'),
    tool: look('tool'),
    wheel: look('wheel'),
  };
}

/** Everything that is named in entries, and these parts, read once. */
export async function readNames(
  logbook: Logbook,
  entries: readonly Entry[],
  parts: readonly Id[],
): Promise<Names> {
  const table = emptyTable();
  const abouts = entries.map(entryAbout);
  const once = (ids: readonly Id[]) => [...new Set(ids)];
  await readInto(table, logbook, {
    bikes: once(abouts.flatMap((about) => about.bikes)),
    parts: once([...parts, ...abouts.flatMap((about) => about.parts)]),
    joints: once(abouts.flatMap((about) => about.joints)),
    tools: true,
  });
  namesInside(entries, table);
  return namesIn(table);
}

/** What is named in entries and on rows, read once each and kept while the screen is open. */
export function useNames(
  entries: readonly Entry[],
  more: { bikes?: readonly Id[]; parts?: readonly Id[] } = {},
): Names {
  const logbook = useLogbook();
  const table = useMemo(emptyTable, []);
  const [beat, setBeat] = useState(0);
  const asked = useMemo(() => new Set<string>(), []);
  const looked = useMemo(() => new WeakSet<Entry>(), []);
  const alive = useRef(true);
  useEffect(
    () => () => {
      alive.current = false;
    },
    [],
  );
  const parts = more.parts?.join() ?? '';
  const bikes = more.bikes?.join() ?? '';
  useEffect(() => {
    const read = async () => {
      const fresh = entries.filter((entry) => !looked.has(entry));
      for (const entry of fresh) looked.add(entry);
      const known = countNames(table);
      const abouts = fresh.map(entryAbout);
      const first = (kind: string, ids: Id[]) =>
        ids.filter((id) => id !== '' && !asked.has(`${kind}${id}`) && asked.add(`${kind}${id}`));
      const newBikes = first('b', [
        ...new Set([...bikes.split(','), ...abouts.flatMap((about) => about.bikes)]),
      ]);
      const tools = first('t', ['all']).length > 0;
      const newParts = first('p', [
        ...new Set([...parts.split(','), ...abouts.flatMap((about) => about.parts)]),
      ]);
      const newJoints = first('j', [...new Set(abouts.flatMap((about) => about.joints))]);
      await readInto(table, logbook, { bikes: newBikes, parts: newParts, joints: newJoints, tools });
      namesInside(fresh, table);
      // Only new names make sentences read differently.
      if (countNames(table) !== known && alive.current) setBeat((old) => old + 1);
    };
    // Without a name the sentence says so; the entry itself is there.
    read().catch(() => undefined);
  }, [logbook, entries, parts, bikes]);
  return useMemo(
    () => namesIn(table),
    // A new object at each beat, so that sentences are told anew with the names that came in.
    [table, beat],
  );
}
