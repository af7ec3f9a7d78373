import { afterEach, beforeEach, expect, test } from 'vitest';
import { fileShared } from '../../../src/screens/settings/copies/fromOutside.ts';
import { receive } from '../../../sw/receive.ts';

/** The parts of a cache storage by name, each with its answers by path. */
let parts: Map<string, Map<string, Response>>;
let full = false;

beforeEach(() => {
  parts = new Map();
  full = false;
  const open = async (name: string) => {
    const answers = parts.get(name) ?? new Map<string, Response>();
    parts.set(name, answers);
    return {
      async put(path: string, answer: Response) {
        if (full) throw new DOMException('no room', 'QuotaExceededError');
        answers.set(path, answer);
      },
      match: async (path: string) => answers.get(path)?.clone(),
    };
  };
  const storage = {
    open,
    has: async (name: string) => parts.has(name),
    delete: async (name: string) => parts.delete(name),
  };
  Object.assign(globalThis, { caches: storage });
});
afterEach(() => {
  Reflect.deleteProperty(globalThis, 'caches');
});

function shared(file: File, field = 'copy'): Request {
  const form = new FormData();
  form.append(field, file);
  return new Request('https://bench.example/share', { method: 'POST', body: form });
}

/** What the settings are given, as soon as they ask. */
async function taken() {
  const found = await fileShared(caches);
  return found ? { text: await found.file.text(), done: found.done } : 'nothing';
}

test('a file that another app shares is kept and opens the settings', async () => {
  const answer = await receive(shared(new File(['a copy'], 'copy.zip')));
  expect(answer.status).toBe(303);
  expect(answer.headers.get('location')).toBe('https://bench.example/#/settings');
  const first = await taken();
  if (first === 'nothing') throw new Error('no file came');
  expect(first.text).toBe('a copy');
  // Until it was dealt with it comes again, as after the app was closed.
  expect(await taken()).toMatchObject({ text: 'a copy' });
  await first.done();
  expect(await taken()).toBe('nothing');
  expect([...parts.keys()]).toEqual([]);
});

test('of several one is kept: the newest', async () => {
  await receive(shared(new File(['one'], '1.zip')));
  await receive(shared(new File(['two'], '2.zip')));
  expect(parts.get('pinchbolt-shared')?.size).toBe(1);
  expect(await taken()).toMatchObject({ text: 'two' });
});

test('without room for it the settings open all the same', async () => {
  full = true;
  expect((await receive(shared(new File(['x'], 'x.zip')))).status).toBe(303);
  expect(await taken()).toBe('nothing');
});

test('what is no form opens the settings as well', async () => {
  const strange = new Request('https://bench.example/share', { method: 'POST', body: 'x' });
  expect((await receive(strange)).status).toBe(303);
  expect(parts.size).toBe(0);
});

test('a form without the file leaves the one that waits', async () => {
  await receive(shared(new File(['a copy'], 'copy.zip')));
  expect((await receive(shared(new File(['x'], 'x.zip'), 'other'))).status).toBe(303);
  expect(await taken()).toMatchObject({ text: 'a copy' });
});
