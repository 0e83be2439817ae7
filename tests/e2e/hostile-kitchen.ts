import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';

type Cell = string | number | null;
type Row = Record<string, Cell>;

/** Markup that would act if anything took it for markup; the number keeps names apart. */
export const markup = (number: number) => `<img src=x onerror="window.hit=1"><b>${number}</b>`;

/** The columns of people's words, with the most characters each may have. */
const wordColumns: Readonly<Record<string, number>> = {
  name: 100,
  question: 400,
  note: 4000,
  words: 4000,
  why: 4000,
  reason: 400,
  discard_reason: 400,
  low_word: 100,
  high_word: 100,
  lot: 60,
  rests: 200,
  asked: 200,
  label: 20,
};

/** Same words stay the same words, so that what is called by name is still found. */
function rewriter(): (text: string, most: number) => string {
  const known = new Map<string, string>();
  return (text, most) => {
    const found = known.get(`${most} ${text}`);
    if (found !== undefined) return found;
    const number = known.size + 1;
    const made = (most < 50 ? `<b>${number}</b>` : markup(number)).slice(0, most);
    known.set(`${most} ${text}`, made);
    return made;
  };
}

/** A carried file of the sample kitchen in which every text of people's is markup; `liking` keeps its name, which the findings go by. */
export async function hostileKitchen(): Promise<{ text: string; replaced: number }> {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-hostile-'));
  const desk = deskOf(await openKitchen(join(folder, 'k.sidejar')));
  await desk.handle('kitchen:sample', {});
  await desk.handle('data:export', { to: join(folder, 'out') });
  desk.close();
  const whole = JSON.parse(readFileSync(join(folder, 'out', 'kitchen.json'), 'utf8')) as {
    tables: Record<string, Row[]>;
    from: string;
  };
  rmSync(folder, { recursive: true, force: true });
  const hostile = rewriter();
  let replaced = 0;
  for (const rows of Object.values(whole.tables)) {
    for (const row of rows) {
      for (const [column, most] of Object.entries(wordColumns)) {
        const cell = row[column];
        if (!(column in row) || cell === 'liking' || typeof cell === 'number') continue;
        // Empty remarks are filled, too.
        if (cell === null && !['note', 'why', 'lot', 'low_word', 'high_word'].includes(column)) continue;
        row[column] = hostile(String(cell), most);
        replaced += 1;
      }
      for (const column of ['formula', 'held']) {
        const cell = row[column];
        if (typeof cell !== 'string') continue;
        row[column] = cell.replace(/"ingredient":"((?:[^"\\]|\\.)*)"/g, (_whole, name: string) => {
          replaced += 1;
          return `"ingredient":${JSON.stringify(hostile(name, 100))}`;
        });
      }
    }
  }
  return { text: JSON.stringify({ ...whole, from: markup(0) }), replaced };
}
