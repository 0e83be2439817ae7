import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

describe('readings:import', () => {
  it('takes CSV, TSV, semicolons with decimal commas, and JSON, by label and hours or moment', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    const [a = '', b = ''] = jars.map(({ label }) => label);
    const tables = [
      `jar,hours,brix,ph\n${a},24,6.2,3.5\n${b},24,,3.6\n`,
      `\uFEFFJar\tWhen\tTemp\n${a}\t2026-05-02T09:30:00Z\t22\n`,
      `Label;h;°Bx;note\n${b.toLowerCase()};48;4,5;"still; sweet"\n`,
      JSON.stringify([{ jar: a, hours: 60, sg: 1.012, acidity: 3.1, acid: 'lactic' }]),
    ];
    for (const [place, table] of tables.entries()) {
      const { accepted, refused } = await test.ask('readings:import', { trial, table });
      expect([accepted, refused]).toEqual([place === 0 ? 2 : 1, []]);
    }
    const jar = (await test.ask('jars:open', { jar: jars[0]?.id ?? '' })).readings;
    expect(
      jar.map(({ takenAt, brix, sg, temperature_C, acidityAs }) => [takenAt, brix, sg, temperature_C, acidityAs]),
    ).toEqual([
      ['2026-05-02T08:00:00.000Z', 6.2, null, null, null],
      ['2026-05-02T09:30:00.000Z', null, null, 22, null],
      ['2026-05-03T20:00:00.000Z', null, 1.012, null, 'lactic'],
    ]);
    const other = (await test.ask('jars:open', { jar: jars[1]?.id ?? '' })).readings;
    expect(other.map(({ brix, note }) => [brix, note])).toEqual([
      [null, null],
      [4.5, 'still; sweet'],
    ]);
    await test.ask('undo:last', {});
    expect((await test.ask('jars:open', { jar: jars[0]?.id ?? '' })).readings).toHaveLength(2);
  });

  it('takes a table that says what stands between its cells, and JSON with its list inside or one record alone', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    const [a = ''] = jars.map(({ label }) => label);
    for (const table of [
      `sep=;\r\njar;hours;brix\r\n${a};24;6,2\r\n`,
      JSON.stringify({ kitchen: 'another', readings: [{ jar: a, hours: 36, brix: 5 }] }),
      JSON.stringify({ jar: a, hours: 48, brix: 4 }),
    ]) {
      expect(await test.ask('readings:import', { trial, table }), table).toMatchObject({ accepted: 1, refused: [] });
    }
    const { readings } = await test.ask('jars:open', { jar: jars[0]?.id ?? '' });
    expect(readings.map(({ brix }) => brix)).toEqual([6.2, 5, 4]);
  });

  it('takes a temperature in the unit that its heading says, and without one in the kitchen’s own', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    const a = jars[0]?.label ?? '';
    const table = (head: string, figure: number) => `jar,hours,${head}\n${a},24,${figure}\n`;
    const take = (head: string, figure: number) => test.ask('readings:import', { trial, table: table(head, figure) });
    const last = async () => (await test.ask('jars:open', { jar: jars[0]?.id ?? '' })).readings.at(-1)?.temperature_C;
    // 68 °F are 20 °C (NIST SP 811, B.8).
    for (const [head, figure] of [
      ['Temp (°F)', 68],
      ['temperature_F', 68],
      ['Temperature', 20],
      ['temp c', 20],
    ] as const) {
      expect(await take(head, figure), head).toMatchObject({ accepted: 1, refused: [] });
      expect(await last(), head).toBeCloseTo(20, 10);
    }
    await test.ask('kitchen:change', { measures: 'us' });
    expect(await take('temp', 68)).toMatchObject({ columns: [{}, {}, { meaning: 'temperature_F' }] });
    expect(await last()).toBeCloseTo(20, 10);
    expect(await take('temp', 400)).toMatchObject({ refused: [{ message: expect.stringContaining('−40 to 230') }] });
    expect(await test.ask('readings:import', { trial, table: `jar,hours,°c,°f\n${a},1,20,68\n` })).toMatchObject({
      accepted: 0,
      refused: [{ row: 1, code: 'column-twice' }],
    });
  });

  it('says moments as a kitchen does where one can’t be', async () => {
    const test = await temporaryDesk();
    const { jars } = await preparedTrial(test);
    const before = { jar: jars[0]?.id ?? '', at: '2026-04-01T10:00:00Z', brix: 5 };
    expect((await test.fail('readings:log', before)).message).toMatch(
      /^This lies before jar A was started \(\d{1,2} \w+ 2026, \d\d:\d\d\)\.$/,
    );
  });

  it('names each row that it can’t take with its column and why, and keeps the good ones; a preview keeps nothing', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    const a = jars[0]?.label ?? '';
    const table = [
      'jar,hours,at,brix,ph,acidity,acid',
      `${a},1,,5,,,`,
      `Z,1,,5,,,`,
      `${a},,,5,,,`,
      `${a},x,,5,,,`,
      `${a},,yesterday,5,,,`,
      `${a},,2020-01-01 10:00,5,,,`,
      `${a},,2027-05-02 10:00,5,,,`,
      `${a},9999,,5,,,`,
      `${a},1,,much,,,`,
      `${a},1,,200,,,`,
      `${a},1,,,15,,`,
      `${a},1,,,,3,`,
      `${a},1,,,,,`,
      `,,,,,,`,
    ].join('\n');
    const told = await test.ask('readings:import', { trial, table, preview: true });
    expect(told.accepted).toBe(1);
    expect(told.refused.map(({ row, column, code }) => [row, column, code])).toEqual([
      [3, 'jar', 'unknown-jar'],
      [4, 'at', 'no-moment'],
      [5, 'hours', 'not-a-number'],
      [6, 'at', 'not-a-moment'],
      [7, 'at', 'before-start'],
      [8, 'at', 'still-to-come'],
      [9, 'hours', 'still-to-come'],
      [10, 'brix', 'not-a-number'],
      [11, 'brix', 'out-of-range'],
      [12, 'ph', 'out-of-range'],
      [13, 'acid', 'no-acid'],
      [14, undefined, 'no-figure'],
    ]);
    const stored = () => test.kitchen.read.all('SELECT id FROM readings');
    expect(stored()).toEqual([]);
    await test.ask('readings:import', { trial, table });
    expect(stored()).toHaveLength(1);
  });

  it('cuts off no note, keeps none that an export could not bring back, and reads no 4,2 as 4', async () => {
    const test = await temporaryDesk();
    const { trial } = await preparedTrial(test);
    const rows = [
      ['A', 1, 5, 'x'.repeat(4000)],
      ['A', 2, 5, 'x'.repeat(4001)],
      ['A', 3, 5, 'bell\u0007'],
      ['A', 4, 5, 'turned\u202eabc'],
    ];
    const table = `jar,hours,brix,note\n${rows.map((row) => row.join(',')).join('\n')}\nA,5,4,2,sour`;
    const { accepted, refused } = await test.ask('readings:import', { trial, table });
    expect([accepted, refused.map(({ row, column, code }) => [row, column, code])]).toEqual([
      1,
      [
        [3, 'note', 'bad-note'],
        [4, 'note', 'bad-note'],
        [5, 'note', 'bad-note'],
        [6, undefined, 'too-many-cells'],
      ],
    ]);
  });

  it('goes by a mapping, and refuses what is no table of readings', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    const a = jars[0]?.label ?? '';
    const mapped = await test.ask('readings:import', {
      trial,
      table: `Glas,Std,Zucker,brix\n${a},3,7,99\n`,
      mapping: { Glas: 'jar', Std: 'hours', Zucker: 'brix', brix: '' },
    });
    expect(mapped).toMatchObject({ accepted: 1, refused: [] });
    for (const table of ['what is this', '%PDF-1.7', '[1, 2]', '{"jar": 1', 'jar,jar\na,b']) {
      const { accepted, refused } = await test.ask('readings:import', { trial, table });
      expect([accepted, refused[0]?.row]).toEqual([0, 1]);
    }
    const stranger = await test.ask('readings:import', { trial, table: '{"jar": 1}' });
    expect(stranger).toMatchObject({ accepted: 0, refused: [{ row: 2, column: 'jar' }] });
    expect(await test.fail('readings:import', { trial: crypto.randomUUID(), table: 'x' })).toMatchObject({
      code: 'not-found',
    });
  });
});
