// Runs beside the attacks: takes the lines of a journal and gives the rows of a fresh fold, as plain text.
import { pathToFileURL } from 'node:url';

const { freshRows } = await import(pathToFileURL(process.argv[2] ?? '').href);

process.on('message', ({ at, lines }) => {
  try {
    process.send({ at, rows: JSON.stringify(freshRows(JSON.parse(lines))) });
  } catch (thrown) {
    process.send({ at, failed: String(thrown?.stack ?? thrown) });
  }
});
