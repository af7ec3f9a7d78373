// Prints every text that the product can show, with its place: for proofreading in one sitting. A word narrows it.
import { fileURLToPath } from 'node:url';
import { allTexts } from './words/texts.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const asked = process.argv.slice(2).join(' ').toLowerCase();
const texts = allTexts().filter(({ text }) => text.toLowerCase().includes(asked));
for (const { path, line, text } of texts) console.log(`${path}:${line}\t${text}`);
console.log(`${texts.length} texts`);
