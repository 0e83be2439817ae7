import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { chartKeyWords } from '#renderer/charts/chart-key.ts';
import { brokenLines } from '#renderer/charts/chart-svg.ts';
import { factorChartCsv } from '#renderer/charts/factor-chart-csv.ts';
import { factorChartData } from '#renderer/charts/factor-chart-data.ts';
import { factorChartFigures } from '#renderer/charts/factor-chart-figures.ts';
import { fileName } from '#renderer/format/save-file.ts';
import { csvText, harmlessCell, tabbedText } from '#shared/csv-text.ts';
import { findings, idOf } from '../small-kitchen.ts';

const levels = ['2 days', '4 days'];
const sip = (day: number, tang: number) => ({
  id: idOf(900 + day),
  takenAt: '2026-05-02T09:00:00Z',
  tang,
  fizz: null,
  sweetness: null,
  liking: null,
  note: null,
  jar: idOf(166),
  label: 'B',
  levelName: '4 days',
  day,
});

describe('csvText(rows)', () => {
  it('leads words that a spreadsheet would run with an apostrophe, and leaves numbers numbers', () => {
    for (const word of ['=1+1', '+1', '-1', '@A1', ' =1', '\t=1', '＝1']) expect(harmlessCell(word)).toBe(`'${word}`);
    expect(harmlessCell('3 days')).toBe('3 days');
    expect(csvText([['=HYPERLINK("x")', -1.5, null]])).toBe(`"'=HYPERLINK(""x"")",-1.5,\r\n`);
  });

  it('is not deceived by what stands before the sign and shows nothing, or is taken off where it is pasted', () => {
    for (const word of [
      '"=1+1"',
      "'=1",
      '\u200b=1',
      '\ufeff@A1',
      '\u00a0+1',
      ' "-1',
      '\r=1',
      '\t1',
      '＠A1',
      '＋1',
      '－1',
    ]) {
      expect(harmlessCell(word)).toBe(`'${word}`);
    }
    for (const word of ['"so"', "Ann's", 'a=b', '\u200d', '‘so’']) expect(harmlessCell(word)).toBe(word);
  });

  it('leads such words on the clipboard, too, whose numbers stay numbers', () => {
    const rows = [
      ['level', 'mean'],
      ['"=HYPERLINK(1)"', -1.5],
      ['two\nlines\there', null],
    ];
    expect(tabbedText(rows)).toBe(`level\tmean\n'"=HYPERLINK(1)"\t-1.5\ntwo lines here\t`);
  });

  it('is read back by a CSV reader as it was', () => {
    const rows = [
      ['a, b', 'say "so"', 'two\nlines'],
      ['', 'ü', '1;2'],
    ];
    expect(Papa.parse<string[]>(csvText(rows), { skipEmptyLines: true }).data).toEqual(rows);
  });
});

describe('factorChartCsv(charts)', () => {
  it('has a line for every mark, sips named as the maker’s', () => {
    const data = factorChartData(findings, 'tang', levels, { factor: 'days', sips: [sip(1, 4)] });
    const { data: rows } = Papa.parse<Record<string, string>>(factorChartCsv([data]), {
      header: true,
      skipEmptyLines: true,
    });
    const kinds = rows.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'score')).toHaveLength(4);
    expect(kinds.filter((kind) => kind === 'mean')).toHaveLength(2);
    expect(kinds.filter((kind) => kind === 'curve')).toHaveLength(3);
    expect(rows.find(({ kind }) => kind === 'sip')).toMatchObject({
      taster: 'the maker',
      jar: 'B',
      day: '1',
      value: '4',
    });
    expect(rows.find(({ kind, level }) => kind === 'mean' && level === '4 days')).toMatchObject({
      scores: '2',
      value: '7',
      low_95: '6',
      high_95: '8',
    });
  });

  it('keeps a level’s name from running, as file and on the clipboard', () => {
    const evil = {
      ...findings,
      scores: findings.scores.map((one) => ({ ...one, sample: '=cmd', taster: '@sum' })),
      levels: null,
    };
    const data = factorChartData(evil, 'tang', ['=cmd']);
    expect(factorChartCsv([data])).toContain(`tang,score,'=cmd,'@sum,`);
    const means = data.means.map((mean) => ({ ...mean, level: '=cmd' }));
    expect(factorChartFigures({ ...data, means })).toContain("\n'=cmd\t");
  });
});

describe('factorChartData with sips', () => {
  it('puts a sip at its own day where days are the factor, apart from scores and means', () => {
    const data = factorChartData(findings, 'tang', levels, { factor: 'days', sips: [sip(1, 4), sip(3, 6)] });
    const drawn = data.rows.filter((row) => row.sip !== null);
    expect(drawn.map((row) => row.sip)).toEqual([4, 6]);
    expect(drawn.every((row) => row.score === null && row.mean === null)).toBe(true);
    expect(Math.abs((drawn[0]?.x ?? 0) - 1)).toBeLessThan(0.2);
    expect(data.xDomain[0]).toBeLessThan(1);
    expect(data.means.map(({ mean }) => mean)).toEqual([4, 7]);
  });

  it('puts a sip at its jar’s level where something else moved', () => {
    const data = factorChartData({ ...findings, levels: null }, 'tang', levels, { factor: 'fruit', sips: [sip(1, 4)] });
    expect(Math.abs((data.rows.find((row) => row.sip !== null)?.x ?? 0) - 1)).toBeLessThan(0.2);
  });

  it('keeps sips out of the drawing where the panel scored on another scale, and in the table', () => {
    const other = { ...findings, scales: { tang: [0, 100] as [number, number] } };
    const data = factorChartData(other, 'tang', levels, { factor: 'days', sips: [sip(1, 4)] });
    expect(data.areSipsDrawn).toBe(false);
    expect(data.rows.every((row) => row.sip === null)).toBe(true);
    expect(data.sips).toHaveLength(1);
  });

  it('draws sips alone on their own scale before a panel has tasted', () => {
    const none = { ...findings, scores: [], scales: {}, analysis: null };
    const data = factorChartData(none, 'liking', levels, { factor: 'days', sips: [{ ...sip(1, 4), liking: 6 }] });
    expect(data.yDomain).toEqual([1, 9]);
    expect(data.areSipsDrawn).toBe(true);
    expect(chartKeyWords([data])).toBe('Crosses: your own sips, not blind and never counted in the means.');
  });
});

describe('pictures', () => {
  it('break a long sentence between words', () => {
    expect(brokenLines('one two three four', 9)).toEqual(['one two', 'three', 'four']);
  });

  it('get a name that every machine takes', () => {
    expect(fileName('How many days should pear & ginger stand?', 'csv')).toBe(
      'how-many-days-should-pear-ginger-stand.csv',
    );
    expect(fileName('Säure', 'svg')).toBe('saure.svg');
    expect(fileName('???', 'png')).toBe('chart.png');
  });
});
