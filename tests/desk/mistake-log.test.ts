import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { lastMistakes, mistakeWords, noteMistake, noteMistakesIn } from '#desk/mistake-log.ts';
import { version } from '#shared/version.ts';
import { temporaryDesk, temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const at = new Date('2026-05-01T08:00:00Z');

function mistake(): Error {
  return new TypeError('could not read “Grandmother’s cellar” in /home/ada/secret');
}

describe('the log of mistakes', () => {
  it('tells kind and place, and nothing that a person wrote or where their files lie', () => {
    const words = mistakeWords(mistake(), at, 'trials:open');
    expect(words.split('\n')[0]).toBe('2026-05-01T08:00:00.000Z trials:open: TypeError');
    expect(words).toMatch(/\n {2}mistake-log\.test\.ts:\d+:\d+ /);
    expect(words).not.toMatch(/Grandmother|ada|secret|\/|\\/);
    expect(mistakeWords('only words', at, 'x')).toBe('2026-05-01T08:00:00.000Z x: string');
  });

  it('is copied for a report with versions and counts, and starts anew before it grows large', async () => {
    const file = join(temporaryFolder(), 'workbench.log');
    noteMistakesIn(file);
    const test = await temporaryDesk();
    await test.ask('tasters:save', { name: 'Ada Secret' });
    expect((await test.ask('report:read', {})).text).toContain('No mistake of the program has been noted.');
    noteMistake(mistake(), at, 'trials:open');
    const { text } = await test.ask('report:read', {});
    expect(text).toContain(`Sidejar ${version}, schema`);
    expect(text).toContain('tasters 1');
    expect(text).toContain('trials:open: TypeError');
    expect(text).not.toContain('Ada');
    writeFileSync(file, 'x'.repeat(300_000));
    noteMistake(mistake(), at, 'trials:open');
    expect(readFileSync(file, 'utf8').length).toBeLessThan(10_000);
    expect(existsSync(`${file}.old`)).toBe(true);
    noteMistakesIn(join(file, 'no-folder'));
    noteMistake(mistake(), at, 'trials:open');
    expect(lastMistakes(5)).toBe('');
  });

  it('says the version that package.json has', () => {
    expect(version).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
  });
});
