import { win32 } from 'node:path';
import { describe, expect, test } from 'vitest';
import { slashed } from '../../../../sw/build/slashed.ts';

describe('slashed', () => {
  test.each([
    ['c:\\bikes\\my shop\\src\\main.tsx', 'C:/bikes/my shop/src/main.tsx'],
    ['C:/bikes/my shop/src/main.tsx', 'C:/bikes/my shop/src/main.tsx'],
    ['c:/bikes/my shop/src\\', 'C:/bikes/my shop/src'],
    ['\\\\server\\share\\src\\main.tsx', '//server/share/src/main.tsx'],
    ['/home/me/my shop/src/main.tsx?v=1', '/home/me/my shop/src/main.tsx'],
    ['/home/me/what?/main.tsx', '/home/me/what?/main.tsx'],
    ['src/', 'src'],
    ['/', '/'],
    ['d:\\', 'D:/'],
    ['\0vite/preload-helper.js', '\0vite/preload-helper.js'],
  ])('%j is %j', (path, same) => {
    expect(slashed(path)).toBe(same);
  });

  test('a path that Windows joined equals the one the bundler names', () => {
    const top = 'C:\\Users\\A Rider\\pinchbolt\\';
    expect(slashed(win32.join(top, 'src', 'screens/home/Home.tsx'))).toBe(
      slashed('c:/Users/A Rider/pinchbolt/src/screens/home/Home.tsx'),
    );
    expect(slashed(win32.relative(top, win32.join(top, 'src\\screens\\home')))).toBe('src/screens/home');
  });
});
