import { describe, expect, it } from 'vitest';
import { calendarFile } from '#core/trial/calendar-file.ts';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

// A small reader of its own, written from the grammar of RFC 5545 (sections named at each point), to hold the file against.

interface Line {
  readonly name: string;
  readonly value: string;
}
interface Component {
  readonly name: string;
  readonly lines: Line[];
  readonly parts: Component[];
}

/** 3.1: content lines end in CRLF, hold at most 75 octets, and go on after a break with one space. */
function contentLines(text: string): Line[] {
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const physical of text.split('\r\n')) {
    expect(Buffer.byteLength(physical, 'utf8'), physical).toBeLessThanOrEqual(75);
    // A character that was cut in two would not survive its own encoding.
    expect(physical.isWellFormed()).toBe(true);
  }
  const unfolded = text.replaceAll('\r\n ', '').split('\r\n').slice(0, -1);
  return unfolded.map((line) => {
    const found = /^([A-Z-]+)(?:;[^:]*)?:(.*)$/su.exec(line);
    expect(found, line).not.toBeNull();
    // 3.1, VALUE-CHAR: no control characters but the tab.
    expect(line).not.toMatch(/[^\P{Cc}\t]/u);
    return { name: found?.[1] ?? '', value: found?.[2] ?? '' };
  });
}

/** 3.4 and 3.6: BEGIN and END pair up. */
function component(lines: Line[]): Component {
  const begin = lines.shift();
  expect(begin?.name).toBe('BEGIN');
  const own: Component = { name: begin?.value ?? '', lines: [], parts: [] };
  for (;;) {
    const next = lines[0];
    if (next === undefined) throw new Error(`${own.name} does not end`);
    if (next.name === 'BEGIN') own.parts.push(component(lines));
    else {
      lines.shift();
      if (next.name === 'END') {
        expect(next.value).toBe(own.name);
        return own;
      }
      own.lines.push(next);
    }
  }
}

/** 3.3.11: what a reader makes of TEXT. */
function plainText(value: string): string {
  expect(value.replaceAll(/\\[\\;,nN]/g, '')).not.toMatch(/[\\;,]/);
  return value.replaceAll(/\\([\\;,nN])/g, (_, sign: string) => (sign.toLowerCase() === 'n' ? '\n' : sign));
}

function only(part: Component | undefined, name: string): string {
  const found = part?.lines.filter((line) => line.name === name) ?? [];
  expect(found, name).toHaveLength(1);
  return found[0]?.value ?? '';
}

function parsed(text: string): Component {
  const lines = contentLines(text);
  const calendar = component(lines);
  expect(lines).toEqual([]);
  expect(calendar.name).toBe('VCALENDAR');
  // 3.6: PRODID and VERSION once each, and at least one component.
  expect(only(calendar, 'VERSION')).toBe('2.0');
  expect(only(calendar, 'PRODID')).not.toBe('');
  expect(calendar.parts.length).toBeGreaterThan(0);
  for (const event of calendar.parts) {
    expect(event.name).toBe('VEVENT');
    // 3.6.1: UID and DTSTAMP once; DTSTART once; DTEND or DURATION, not both. 3.8.7.2: DTSTAMP in UTC.
    expect(only(event, 'UID')).not.toBe('');
    expect(only(event, 'DTSTAMP')).toMatch(/^\d{8}T\d{6}Z$/);
    expect(only(event, 'DTSTART')).toMatch(/^\d{8}T\d{6}Z$/);
    expect(only(event, 'DURATION')).toMatch(/^PT\d+M$/);
    expect(event.lines.some(({ name }) => name === 'DTEND')).toBe(false);
    expect(only(event, 'SEQUENCE')).toMatch(/^\d+$/);
    // 3.6.6: a display alarm has ACTION, DESCRIPTION and TRIGGER once each.
    const [alarm, ...more] = event.parts;
    expect(more).toEqual([]);
    expect(alarm?.name).toBe('VALARM');
    expect(only(alarm, 'ACTION')).toBe('DISPLAY');
    expect(only(alarm, 'TRIGGER')).toMatch(/^-?PT\d+[SMH]$/);
    expect(only(alarm, 'DESCRIPTION')).not.toBe('');
  }
  const uids = calendar.parts.map((event) => only(event, 'UID'));
  expect(new Set(uids).size).toBe(uids.length);
  return calendar;
}

describe('trials:calendar', () => {
  it('writes what is still to come of a trial, in UTC, under names that stay the same', async () => {
    const { ask, clock } = await temporaryDesk();
    const question =
      'How long; really?\\ Raspberries, “käse” — 苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺苺 🍓🍓🍓🍓🍓🍓🍓🍓';
    const { trial, jars } = await ask('trials:save', { ...daysPlan, question, start: '2026-05-01T10:00:00+02:00' });
    const first = await ask('trials:calendar', { trial });
    expect(first.name).toBe('how-long-really-raspberries-kase.ics');
    const calendar = parsed(first.text);
    expect(first.events).toBe(6);
    const events = calendar.parts.map((event) => [
      only(event, 'UID'),
      only(event, 'DTSTART'),
      plainText(only(event, 'SUMMARY')),
    ]);
    expect(events).toHaveLength(6);
    expect(events).toContainEqual([`${jars[0]?.id}-start@sidejar`, '20260501T080000Z', 'Start jar A: 1 day']);
    expect(events).toContainEqual([`${jars[2]?.id}-pull@sidejar`, '20260504T080000Z', 'Pull jar C: 3 days']);
    expect(plainText(only(calendar.parts[0], 'DESCRIPTION'))).toBe(question);
    expect(only(calendar.parts[0], 'DTSTAMP')).toBe('20260501T080000Z');
    await ask('jars:start', { jars: jars.map(({ id }) => id) });
    clock.move(24);
    await ask('jars:pull', { jars: [jars[0]?.id ?? ''] });
    const later = parsed((await ask('trials:calendar', { trial })).text);
    const [pull] = later.parts;
    expect(later.parts).toHaveLength(2);
    expect(only(pull, 'UID')).toBe(`${jars[1]?.id}-pull@sidejar`);
    // 3.8.7.4: a later edition of the same event has a greater number.
    expect(Number(only(pull, 'SEQUENCE'))).toBeGreaterThan(0);
  });

  it('says that nothing is to come, instead of a calendar without a component', async () => {
    const { ask, fail, clock } = await temporaryDesk();
    const { trial, jars } = await ask('trials:save', daysPlan);
    const ids = jars.map(({ id }) => id);
    await ask('jars:start', { jars: ids });
    clock.move(72);
    await ask('jars:pull', { jars: ids });
    expect(await fail('trials:calendar', { trial })).toMatchObject({ code: 'refused', path: ['trial'] });
  });
});

describe('calendarFile(events, stamp)', () => {
  const event = { uid: 'a@sidejar', at: '2026-05-01T08:00:00Z', minutes: 15, summary: 'Pull A', sequence: 0 };

  it('keeps line breaks of a note, and drops control characters that have no place in text', () => {
    const text = calendarFile([{ ...event, description: 'one\r\ntwo\u0007;three,\\four' }], event.at);
    expect(plainText(only(parsed(text).parts[0], 'DESCRIPTION'))).toBe('one\ntwo;three,\\four');
  });

  it('folds at 75 octets to the octet, wherever a character of several octets falls', () => {
    for (let before = 55; before < 80; before += 1) {
      const description = `${'a'.repeat(before)}🍓é苺${'b'.repeat(80)}`;
      const text = calendarFile([{ ...event, description }], event.at);
      expect(plainText(only(parsed(text).parts[0], 'DESCRIPTION'))).toBe(description);
    }
  });
});
