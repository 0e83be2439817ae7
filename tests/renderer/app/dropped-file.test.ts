import { describe, expect, it } from 'vitest';
import { droppedFile } from '#renderer/app/dropped-file.ts';

describe('droppedFile(name, place)', () => {
  it.each([
    ['scores.csv', '/tastings/1', '/tastings/1/import'],
    ['scores.TSV', '/tastings/1/sheet/2', '/tastings/1/import'],
    ['log.json', '/trials/7/findings', '/trials/7/readings'],
    ['days.sidejar-trial', '/pantry', '/data'],
    ['kitchen.json', '/trials/7', '/data'],
  ])('takes %s on %s to %s', (name, place, go) => {
    expect(droppedFile(name, place)).toEqual({ go });
  });

  it('says what to do with a kitchen, a picture, and a table on a page that takes none', () => {
    for (const [name, place, words] of [
      ['cellar.sidejar', '/', /Open it from the menu/],
      ['jar.heic', '/trials/7', /Files that can be dropped/],
      ['noending', '/', /Files that can be dropped/],
      ['scores.csv', '/pantry', /on a tasting’s page/],
      ['scores.csv', '/trials/new', /on a tasting’s page/],
    ] as const) {
      expect(droppedFile(name, place)).toEqual({ say: expect.stringMatching(words) });
    }
  });
});
