import { describe, expect, test } from 'vitest';
import { browserPlaces } from '../../browser/browserPlaces.mjs';

// The usual places are common practice of each system, without a source.
describe('browserPlaces', () => {
  test('the program that CHROME_PATH names comes first', () => {
    expect(browserPlaces('linux', { CHROME_PATH: '/opt/c/chrome', PATH: '' }, '/home/a')[0]).toBe(
      '/opt/c/chrome',
    );
  });

  test('quotes around a path with spaces are taken off', () => {
    const places = browserPlaces('win32', { CHROME_PATH: '"D:\\My Tools\\chrome.exe"' }, 'C:\\Users\\a');
    expect(places).toEqual(['D:\\My Tools\\chrome.exe']);
  });

  test('Windows: program folders and the own one, drive letters and spaces kept', () => {
    const places = browserPlaces(
      'win32',
      {
        PROGRAMFILES: 'C:\\Program Files',
        'PROGRAMFILES(X86)': 'C:\\Program Files (x86)',
        LOCALAPPDATA: 'D:\\Users\\A Rider\\AppData\\Local',
      },
      'D:\\Users\\A Rider',
    );
    expect(places[0]).toBe('C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe');
    expect(places).toContain('C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe');
    expect(places).toContain('D:\\Users\\A Rider\\AppData\\Local\\Chromium\\Application\\chrome.exe');
    expect(places.every((place) => /^[A-Z]:\\/.test(place))).toBe(true);
  });

  test('macOS: applications of all users, then of this one', () => {
    const places = browserPlaces('darwin', {}, '/Users/a rider');
    expect(places[0]).toBe('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(places).toContain('/Users/a rider/Applications/Chromium.app/Contents/MacOS/Chromium');
  });

  test('Linux: the folders of programs, then those of PATH', () => {
    const places = browserPlaces('linux', { PATH: '/usr/bin:/opt/my tools' }, '/home/a');
    expect(places[0]).toBe('/usr/bin/chromium');
    expect(places).toContain('/snap/bin/chromium');
    expect(places.at(-1)).toBe('/opt/my tools/microsoft-edge');
    expect(new Set(places).size).toBe(places.length);
  });
});
