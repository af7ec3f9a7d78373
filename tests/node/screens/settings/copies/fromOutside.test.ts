import { expect, test } from 'vitest';
import { filesFromOutside } from '../../../../../src/screens/settings/copies/fromOutside.ts';

type Launch = { files?: readonly FileSystemFileHandle[] };

const handleOf = (text: string) =>
  ({ getFile: async () => new File([text], 'copy.zip') }) as unknown as FileSystemFileHandle;

/** A platform that opens files with the app. */
function launching() {
  let consumer: (launch: Launch) => unknown = () => {};
  const wait = filesFromOutside({
    launchQueue: {
      setConsumer(take) {
        consumer = take;
      },
    },
  });
  return { wait, launch: async (launch: Launch) => consumer(launch) };
}

test('a file that is opened before the settings are there waits for them, and comes once', async () => {
  const { wait, launch } = launching();
  await launch({ files: [handleOf('one')] });
  const texts: string[] = [];
  const leave = wait(async ({ file }) => void texts.push(await file.text()));
  await expect.poll(() => texts).toEqual(['one']);
  leave();
  wait(async ({ file }) => void texts.push(await file.text()));
  await launch({ files: [handleOf('two')] });
  await expect.poll(() => texts).toEqual(['one', 'two']);
});

test('after the settings were left a file waits for the next time', async () => {
  const { wait, launch } = launching();
  const texts: string[] = [];
  wait(async ({ file }) => void texts.push(await file.text()))();
  await launch({ files: [handleOf('one')] });
  expect(texts).toEqual([]);
  wait(async ({ file }) => void texts.push(await file.text()));
  await expect.poll(() => texts).toEqual(['one']);
});

test('a start without a file, or with one that cannot be read, brings none', async () => {
  const { wait, launch } = launching();
  let came = 0;
  wait(() => {
    came += 1;
  });
  await launch({});
  await launch({ files: [] });
  const gone = { getFile: () => Promise.reject(new DOMException('gone', 'NotFoundError')) };
  await launch({ files: [gone as unknown as FileSystemFileHandle] });
  expect(came).toBe(0);
});

test('a platform with neither way asks for nothing', () => {
  expect(() => filesFromOutside({})(() => {})()).not.toThrow();
});
