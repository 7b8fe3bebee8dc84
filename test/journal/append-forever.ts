/** A process to be killed: appends facts one by one and says so after each is acknowledged. */
import { openSqliteJournal } from '../../src/journal/sqlite.ts';

const path = process.argv[2];
if (!path) throw new Error('usage: append-forever JOURNAL');
const journal = openSqliteJournal(path);
let held = (await journal.read('a')).length;
for (;;) {
  const facts = await journal.append('a', held, held, [
    { type: 'guests-counted', count: held % 60 },
    { type: 'dish-dropped', dish: 'green-beans' },
  ]);
  held += facts.length;
  process.stdout.write(`${held}\n`);
}
