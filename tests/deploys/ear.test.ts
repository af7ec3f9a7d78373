import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { firstVisit, openPhone, serveDist } from '../browser/product.ts';
import { anyPluck, chance, partialsHz } from '../fixtures/wheels/pluckedSpoke.ts';

const RATE = 48_000;

/** Samples as a sound file: one channel of 16 bits (the RIFF WAVE layout). */
function waveFile(samples: Float32Array): Buffer {
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + samples.length * 2, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(RATE, 24);
  head.writeUInt32LE(RATE * 2, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36);
  head.writeUInt32LE(samples.length * 2, 40);
  const body = Buffer.alloc(samples.length * 2);
  samples.forEach((sample, at) => {
    body.writeInt16LE(Math.round(32_000 * Math.max(-1, Math.min(1, sample))), at * 2);
  });
  return Buffer.concat([head, body]);
}

/** Plucks of one spoke, one after the other. */
function plucks(hz: readonly number[], count: number): Float32Array {
  const throwOne = chance(16);
  const each = Array.from({ length: count }, () =>
    anyPluck(RATE, hz, throwOne, { seconds: 1.4, snrDb: 30, loud: 0.4, fadeS: 0.7 }),
  );
  return Float32Array.from(each.flatMap((samples) => [...samples]));
}

test('[H5] the microphone hears a spoke of 900 N, and the screen says so', async () => {
  // A radial spoke of 270 mm and 2 mm, clamped at the hub and pinned at the nipple: a beam under tension.
  const folder = mkdtempSync(join(tmpdir(), 'pinchbolt-sound-'));
  const heard = join(folder, 'plucks.wav');
  writeFileSync(heard, waveFile(plucks(partialsHz(270, 2, 900, 6), 6)));
  const served = await serveDist();
  const phone = await openPhone(served.origin, { heard });
  try {
    const { page } = phone;
    await firstVisit(phone, served.origin);
    await page.goto(`${served.origin}/#/new-wheel/shelf`);
    const fill = (label: string, text: string) => page.getByLabel(label, { exact: true }).first().fill(text);
    await fill('Name', 'Front wheel');
    await fill('Effective rim diameter (ERD)', '584');
    for (const side of ['Left side', 'Drive side']) {
      const box = page.getByRole('group', { name: side, exact: true });
      const sizes = { Crossings: '0', 'Hole circle': '45', 'Flange to centre': '35', 'Length bought': '270' };
      for (const [label, text] of Object.entries(sizes))
        await box.getByLabel(label, { exact: true }).fill(text);
    }
    await page.getByRole('button', { name: 'Save' }).click();
    await page.waitForURL(/#\/wheel\//);
    const wheelId = page.url().split('/').at(-1);
    await page.goto(`${served.origin}/#/read-wheel/${wheelId}`);
    await page.getByRole('button', { name: 'By ear, Hz' }).click();
    await page.getByRole('button', { name: /Tension of each spoke/ }).click();
    const title = page.getByRole('heading', { level: 1 });
    await title.filter({ hasText: /^Spoke / }).waitFor();
    const first = (await title.textContent()) ?? '';
    await page.getByRole('button', { name: /^Listen/ }).click();
    await title.filter({ hasNotText: first }).waitFor();
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await page.getByRole('button', { name: 'Spoke before' }).click();
    const said = (await page.getByText(/^[\d.,]+ N\./).textContent()) ?? '';
    const newtons = Number(said.split(' ')[0]?.replaceAll(/[.,]/g, ''));
    expect(newtons).toBeGreaterThan(900 * 0.98);
    expect(newtons).toBeLessThan(900 * 1.02);
  } finally {
    await phone.close();
    await served.stop();
    rmSync(folder, { recursive: true, force: true });
  }
});
