import { describe, expect, it } from 'vitest';
import { droppedFile } from '#renderer/app/dropped-file.ts';
import { sameKitchen } from '#renderer/app/open-dropped-kitchen.ts';

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

  it('opens a kitchen', () => {
    expect(droppedFile('cellar.sidejar', '/')).toEqual({ opens: 'kitchen' });
  });

  it('says what to do with a picture, and a table on a page that takes none', () => {
    for (const [name, place, words] of [
      ['jar.heic', '/trials/7', /Files that can be dropped/],
      ['noending', '/', /Files that can be dropped/],
      ['scores.csv', '/pantry', /on a tasting’s page/],
      ['scores.csv', '/trials/new', /on a tasting’s page/],
    ] as const) {
      expect(droppedFile(name, place)).toEqual({ say: expect.stringMatching(words) });
    }
  });
});

describe('sameKitchen(dropped, folders)', () => {
  const at = '2026-05-01T10:00:00.000Z';
  const kitchen = (file: string, bytes = 4096, time = at) => ({ file, name: 'cellar.sidejar', bytes, at: time });
  const folder = (...kitchens: ReturnType<typeof kitchen>[]) => ({ folder: '/', isReadable: true, kitchens, more: 0 });
  const dropped = { name: 'cellar.sidejar', size: 4096, lastModified: Date.parse(at) + 400 };

  it('knows it by name, size and time, wherever it lies', () => {
    const folders = [folder(kitchen('/a/cellar.sidejar', 8192)), folder(kitchen('/b/cellar.sidejar'))];
    expect(sameKitchen(dropped, folders)).toBe('/b/cellar.sidejar');
  });

  it('knows none that differs, and does not guess between two', () => {
    expect(sameKitchen({ ...dropped, name: 'stall.sidejar' }, [folder(kitchen('/b/cellar.sidejar'))])).toBeNull();
    expect(sameKitchen(dropped, [folder(kitchen('/b/cellar.sidejar', 4096, '2026-05-02T10:00:00.000Z'))])).toBeNull();
    expect(sameKitchen(dropped, [folder(kitchen('/a/cellar.sidejar'), kitchen('/b/cellar.sidejar'))])).toBeNull();
  });
});
