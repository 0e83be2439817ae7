import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { recentKitchens } from '#shell/recent-kitchens.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

describe('recentKitchens', () => {
  it('keeps the latest eight, the latest first, each once, through a restart', () => {
    const file = join(temporaryFolder(), 'recent.json');
    const recent = recentKitchens(file);
    expect(recent.list()).toEqual([]);
    for (let number = 0; number < 10; number += 1) recent.add(`/${number}.sidejar`);
    recent.add('/5.sidejar');
    const wanted = ['5', '9', '8', '7', '6', '4', '3', '2'].map((name) => `/${name}.sidejar`);
    expect(recent.list()).toEqual(wanted);
    expect(recentKitchens(file).list()).toEqual(wanted);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(wanted);
  });

  it('takes a spoilt file for an empty one, and an unwritable place costs only the list', () => {
    const file = join(temporaryFolder(), 'recent.json');
    writeFileSync(file, '{"a":');
    expect(recentKitchens(file).list()).toEqual([]);
    writeFileSync(file, '["/a", 4, null]');
    expect(recentKitchens(file).list()).toEqual(['/a']);
    const nowhere = recentKitchens(join(file, 'x'));
    nowhere.add('/b');
    expect(nowhere.list()).toEqual(['/b']);
  });
});
