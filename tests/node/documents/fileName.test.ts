import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileName } from '../../../src/documents/fileName.ts';

test.each([
  ['../Magpie: rear wheel', 'Magpie rear wheel.txt'],
  ['', 'pinchbolt.txt'],
  ['...', 'pinchbolt.txt'],
  ['.htaccess', 'htaccess.txt'],
  ['a\u202Etxt.exe', 'a txt.exe.txt'],
  ['zero\u200Bwidth', 'zero width.txt'],
  ['line\r\nbreak\u0000', 'line break.txt'],
  ['Lapwing . ', 'Lapwing.txt'],
  // Device names: learn.microsoft.com, "Naming Files, Paths, and Namespaces".
  ['CON', '_CON.txt'],
  ['com1.tar', '_com1.tar.txt'],
  ['Cone', 'Cone.txt'],
  ['Rad Ü 自転車', 'Rad Ü 自転車.txt'],
])('%j is kept as %j', (called, name) => {
  expect(fileName(called, '.txt')).toBe(name);
});

test('whatever a thing is called, its file has a name that every file system takes', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (called) => {
      const name = fileName(called, '.txt');
      expect(name).not.toMatch(/[\p{Cc}\p{Cf}\\/:*?"<>|]|^[ .]|[ .]\.txt$/u);
      expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(210);
      expect(name.length).toBeGreaterThan(4);
    }),
  );
});
