import { writeSync } from 'node:fs';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { doAct, newKnown } from './scripted-acts.ts';

// The process that is killed. It does acts one after the other and says each time, once it is acknowledged, how far it is:
// the act's number, the numbers of steps and changes, and the head of the chain. Its clock is its own, so that nothing of a run is chance.

const [, , file = '', most = '0'] = process.argv;

function say(...words: (string | number)[]): void {
  writeSync(1, `${words.join(' ')}\n`);
}

let time = Date.parse('2026-05-05T08:00:00.000Z');
say('opening');
const kitchen = await openKitchen(file, {
  clock: () => {
    time += 1000;
    return new Date(time);
  },
});
const state = kitchen.db.prepare(
  'SELECT (SELECT count(*) FROM steps), (SELECT count(*) FROM changes), (SELECT hash FROM changes ORDER BY id DESC LIMIT 1)',
);
state.raw();
say('ready', ...(state.get() as (string | number)[]));
const desk = deskOf(kitchen);
const known = newKnown();
for (let act = 0; act < Number(most); act += 1) {
  await doAct(desk, known, act);
  say('done', act, ...(state.get() as (string | number)[]));
}
desk.close();
