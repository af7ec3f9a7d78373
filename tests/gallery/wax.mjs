// Makes src/controls/wax-down.webp from wax-down.svg: node tests/gallery/wax.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';

const { path, why } = findBrowser({ install: true });
if (!path) throw new Error(why);
const browser = await chromium.launch({ executablePath: path });
const page = await browser.newPage();
const svg = readFileSync(new URL('wax-down.svg', import.meta.url), 'utf8');
const address = await page.evaluate(async (text) => {
  const drawing = new Image();
  drawing.src = `data:image/svg+xml,${encodeURIComponent(text)}`;
  await drawing.decode();
  const canvas = document.createElement('canvas');
  canvas.width = drawing.width;
  canvas.height = drawing.height;
  canvas.getContext('2d').drawImage(drawing, 0, 0);
  return canvas.toDataURL('image/webp', 0.6);
}, svg);
writeFileSync(
  new URL('../../src/controls/wax-down.webp', import.meta.url),
  Buffer.from(address.split(',')[1], 'base64'),
);
await browser.close();
