import { phrase } from '#core/words/phrase.ts';

/** One thing to do, as a telephone's calendar keeps it. */
export interface CalendarEvent {
  /** The same thing keeps it, so that a newer file replaces an older entry. */
  readonly uid: string;
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly minutes: number;
  readonly summary: string;
  readonly description: string;
  /** Grows with every change of what it comes from. */
  readonly sequence: number;
}

const lineOctets = 75;
const encoder = new TextEncoder();

/** RFC 5545, 3.3.11: a backslash before backslash, semicolon and comma; a line break as \n. Other control characters have no place. */
function escapedText(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\P{Cc}\n\t]/gu, '')
    .replaceAll(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll('\n', '\\n');
}

/** RFC 5545, 3.1: no line longer than 75 octets, its break aside; a character is never cut in two. */
function foldedLine(line: string): string {
  let folded = '';
  let octets = 0;
  for (const character of line) {
    const size = encoder.encode(character).length;
    if (octets + size > lineOctets) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return `${folded}\r\n`;
}

/** RFC 5545, 3.3.5, form 2: UTC. */
function utcTime(moment: string): string {
  return new Date(moment)
    .toISOString()
    .replace(/\.\d{3}/, '')
    .replaceAll(/[-:]/g, '');
}

function eventLines(event: CalendarEvent, stamp: string): string[] {
  const summary = escapedText(event.summary);
  return [
    'BEGIN:VEVENT',
    `UID:${escapedText(event.uid)}`,
    `DTSTAMP:${utcTime(stamp)}`,
    `SEQUENCE:${event.sequence}`,
    `DTSTART:${utcTime(event.at)}`,
    `DURATION:PT${event.minutes}M`,
    `SUMMARY:${summary}`,
    ...(event.description === '' ? [] : [`DESCRIPTION:${escapedText(event.description)}`]),
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'TRIGGER:PT0S',
    `DESCRIPTION:${summary}`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/**
 * A calendar file that telephones take in.
 *
 * Method: iCalendar 2.0; lines end in CRLF and are folded at 75 octets, times are UTC, text is escaped, each event rings when it is due.
 * Leaves out time zones (none are needed for UTC), repeats and invitations.
 *
 * @param events at least one: the grammar asks for a component; moments ISO 8601 with offset, minutes whole and positive
 * @param stamp when the file is made, ISO 8601 with offset
 * @throws RangeError when a moment can't be read
 * Source: RFC 5545, sections 3.1, 3.3.5, 3.3.11, 3.6, 3.6.1, 3.6.6, 3.8.
 * @example calendarFile([{ uid: 'a@sidejar', at: '2026-05-01T08:00:00Z', minutes: 15, summary: 'Pull A', description: '', sequence: 0 }], now)
 */
export function calendarFile(events: readonly CalendarEvent[], stamp: string): string {
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    phrase`PRODID:-//Sidejar//Trial calendar//EN`,
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => eventLines(event, stamp)),
    'END:VCALENDAR',
  ]
    .map(foldedLine)
    .join('');
}
