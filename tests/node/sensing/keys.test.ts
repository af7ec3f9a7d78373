import { describe, expect, test } from 'vitest';
import { commandOf } from '../../../src/sensing/keys.ts';

test('example of the docstring', () => expect(commandOf({ key: 'PageDown' })).toBe('next'));

// Key names: W3C, UI Events KeyboardEvent key Values. That presenters send page keys: common practice, no source.
test.each([
  ['ArrowRight', 'next'],
  ['PageDown', 'next'],
  [' ', 'next'],
  ['ArrowLeft', 'back'],
  ['PageUp', 'back'],
  ['Enter', 'applied'],
  // WCAG 2.2 SC 2.1.4: no single letter is a shortcut.
  ['a', undefined],
  ['u', undefined],
  ['Backspace', 'undo'],
  ['x', undefined],
  ['Tab', undefined],
  ['Escape', undefined],
  ['constructor', undefined],
] as const)('%j asks for %s', (key, command) => expect(commandOf({ key })).toBe(command));

describe('modifiers', () => {
  test('control and Z takes back', () => expect(commandOf({ key: 'z', ctrlKey: true })).toBe('undo'));
  test('so does the command key of other keyboards', () =>
    expect(commandOf({ key: 'z', metaKey: true })).toBe('undo'));
  test('the browser keeps its own shortcuts', () => {
    expect(commandOf({ key: 'a', ctrlKey: true })).toBeUndefined();
    expect(commandOf({ key: 'ArrowLeft', altKey: true })).toBeUndefined();
  });
});

test('a pedal held down signs off nothing twice', () =>
  expect(commandOf({ key: 'Enter', repeat: true })).toBeUndefined());
