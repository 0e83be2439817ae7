// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { columnNames, leftOut } from '#renderer/pages/history/column-names-table.ts';
import { HistoryPage } from '#renderer/pages/history/history-page.tsx';
import { manyWords, rowName } from '#renderer/pages/history/row-words.ts';
import { StepPage } from '#renderer/pages/history/step-page.tsx';
import { cellWords } from '#renderer/pages/history/what-changed.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { recordedTables } from '#shared/recorded-tables.ts';
import { tables } from '#store/tables.ts';
import { pageOver } from '../page-over.tsx';
import { idOf, kitchen } from '../small-kitchen.ts';
import { standInBridge } from '../stand-in-bridge.ts';

afterEach(cleanup);

type Entry = ValueOf<'history:row'>['entries'][number];

const id = idOf(7);
const about = (name: string): ValueOf<'history:about'> => ({
  row: { table: 'tasters', id, name, at: null, also: [], isHere: true, of: [] },
  isVeiled: false,
  parts: [],
});
const row = { id, revision: 1, name: 'Ana', avoids: '[]', avoids_alcohol: 0, note: null };
const entry = (step: number, more: Partial<Entry>): Entry => ({
  step,
  at: `2026-05-0${step}T08:00:00.000Z`,
  summary: `step ${step}`,
  kind: 'do',
  before: row,
  after: row,
  isErased: false,
  isUndone: false,
  ...more,
});

describe('What changed, and when', () => {
  it('shows what each step changed, before and after, in plain words, and which was undone', async () => {
    const renamed = { ...row, name: 'Anna', avoids: '["nuts","milk"]', revision: 2 };
    const entries = [
      entry(5, { summary: 'remove taster Ana', after: null }),
      entry(4, { summary: 'undo: change taster', kind: 'undo', before: renamed, after: row }),
      entry(3, { summary: 'change taster Anna', after: renamed, isUndone: true }),
      entry(2, { summary: 'erase', before: null, after: null, isErased: true }),
      entry(1, { summary: 'add taster Ana', before: null }),
    ];
    pageOver(
      standInBridge({ 'kitchen:open': kitchen, 'history:about': about('Ana'), 'history:row': { entries } }),
      <HistoryPage table="tasters" id={id} />,
    );
    expect(await screen.findByRole('heading', { level: 1, name: 'What changed, and when' })).toBeTruthy();
    expect(screen.getByRole('link', { name: 'The taster Ana' }).getAttribute('href')).toBe('/tasters');
    await screen.findByText('Change taster Anna');
    const items = screen.getAllByRole('listitem').map((item) => item.textContent.replace(/\s+/g, ' '));
    expect(items).toHaveLength(5);
    expect(items[0]).toContain('Removed. It lay in the bin');
    expect(items[1]).toMatch(/Name.*Anna became→ Ana.*Avoids.*nuts and milk became→ nothing/);
    expect(items[2]).toMatch(/Change taster Anna \(later undone\).*Ana became→ Anna.*nothing became→ nuts and milk/);
    expect(items[3]).toContain('can no longer be read');
    // A new row tells what was filled in, and nothing of the store's own columns.
    expect(within(screen.getAllByRole('listitem')[4] as HTMLElement).getAllByRole('term')).toHaveLength(2);
    expect(items[4]).toMatch(/Name\s?Ana.*Avoids alcohol\s?no/);
  });

  it('says that a thing is not known here', async () => {
    const none: ValueOf<'history:about'> = { row: null, isVeiled: false, parts: [] };
    const bridge = standInBridge({ 'kitchen:open': kitchen, 'history:about': none });
    pageOver(bridge, <HistoryPage table="jars" id={id} />);
    expect(await screen.findByRole('heading', { level: 1, name: 'This is not known here' })).toBeTruthy();
    cleanup();
    pageOver(bridge, <HistoryPage table="sqlite_schema" id={id} />);
    expect(await screen.findByRole('heading', { level: 1, name: 'This is not known here' })).toBeTruthy();
    expect(bridge.asked.filter(({ name }) => name.startsWith('history:'))).toHaveLength(1);
  });
});

describe('What one step changed', () => {
  const stepOf = (more: Partial<ValueOf<'history:step'>>): ValueOf<'history:step'> => ({
    step: 7,
    at: '2026-05-01T08:00:00.000Z',
    request: 'jars:discard',
    summary: 'discard A1',
    kind: 'do',
    total: 2,
    rows: [],
    withheld: 0,
    next: null,
    ...more,
  });
  const reading = {
    change: 1,
    row: {
      table: 'readings',
      id,
      name: '',
      at: '2026-05-01T08:00:00.000Z',
      also: [],
      isHere: true,
      of: [{ table: 'jars', id: idOf(8), name: 'A1', at: null }],
    },
    before: null,
    after: { id, brix: 8.5 },
    isErased: false,
  } satisfies ValueOf<'history:step'>['rows'][number];

  it('leads from each row to its whole history, and says how many are kept back', async () => {
    pageOver(
      standInBridge({ 'kitchen:open': kitchen, 'history:step': stepOf({ rows: [reading], withheld: 1 }) }),
      <StepPage step="7" />,
    );
    expect(await screen.findByRole('heading', { level: 1, name: 'Discard A1' })).toBeTruthy();
    const link = screen.getByRole('link', { name: /^Reading of 1 May 2026, / });
    expect(link.getAttribute('href')).toBe(`/history/readings/${id}`);
    expect(screen.getByText('Jar A1')).toBeTruthy();
    expect(screen.getByText(/^1 row of it would tell which jar/)).toBeTruthy();
  });

  it('says that a step is not known, and asks for none whose number is none', async () => {
    const bridge = standInBridge({ 'kitchen:open': kitchen });
    pageOver(bridge, <StepPage step="0x1" />);
    expect(await screen.findByRole('heading', { level: 1, name: 'This step is not known here' })).toBeTruthy();
    expect(bridge.asked.map(({ name }) => name)).not.toContain('history:step');
  });
});

describe('what a row is called', () => {
  it('is said for a row of each table, with a name and without one', () => {
    for (const table of recordedTables) {
      const moment = '2026-05-01T08:00:00.000Z';
      const said = rowName({ table, id, name: 'X1', at: moment });
      expect(said).toMatch(/\w{3}/);
      expect(rowName({ table, id, name: '', at: null })).not.toContain('undefined');
      expect(manyWords(table)).toMatch(/^[A-Z]/);
    }
  });
});

describe('the names of columns', () => {
  it('are there for each column of each table, or it is left out on purpose, and none is of a column gone', () => {
    const all = new Set(Object.values(tables).flatMap(({ columns }) => Object.keys(columns)));
    expect([...all].filter((column) => columnNames[column] === undefined && !leftOut.has(column))).toEqual([]);
    const known = new Set([...all, 'id', 'revision', 'is_sample', 'created_at']);
    expect([...Object.keys(columnNames), ...leftOut].filter((column) => !known.has(column))).toEqual([]);
  });
});

describe('cellWords(column, cell, measures)', () => {
  it('says amounts in the kitchen’s measures, moments as days, lists and formulas without brackets', () => {
    const metric = measuresOf('metric');
    expect(cellWords('base_mL', 800, metric)).toBe('800 mL');
    expect(cellWords('base_mL', 800, measuresOf('us'))).toMatch(/cup|fl oz|quart|pint/);
    expect(cellWords('is_control', 1, metric)).toBe('yes');
    expect(cellWords('started_at', '2026-05-01T08:00:00.000Z', metric)).toMatch(/^1 May 2026, /);
    expect(cellWords('vessel_kind', 'open-jar', metric)).toBe('open jar');
    expect(cellWords('factor', 'days', metric)).toBe('How many days');
    // A person may be called like a vessel.
    expect(cellWords('name', 'crown', metric)).toBe('crown');
    const formula = '{"additions":[{"ingredient":"raspberries","mass_g":75}],"cover":"cloth","days":null}';
    expect(cellWords('formula', formula, metric)).toBe('additions raspberries, mass 75 g, cover under cloth');
    expect(cellWords('note', '[broken', metric)).toBe('[broken');
    expect(cellWords('note', null, metric)).toBe('nothing');
  });
});
