import { type CalendarEvent, calendarFile } from '#core/trial/calendar-file.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { findTrial, type TrialWhole } from '#store/rows/trials.ts';
import type { Row } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

type Jar = TrialWhole['jarsWhole'][number];

function jarEvent(jar: Jar, question: string, act: 'start' | 'pull'): CalendarEvent {
  return {
    uid: `${jar.id}-${act}@sidejar`,
    at: act === 'start' ? jar.plannedStart : pullDue(jar),
    minutes: 15,
    summary:
      act === 'start'
        ? phrase`Start jar ${jar.label}: ${jar.levelName}`
        : phrase`Pull jar ${jar.label}: ${jar.levelName}`,
    description: question,
    sequence: jar.revision - 1,
  };
}

/** What is still to come of a jar. */
function jarEvents(jar: Jar, question: string): CalendarEvent[] {
  if (jar.state === 'planned') return [jarEvent(jar, question, 'start'), jarEvent(jar, question, 'pull')];
  return jar.state === 'fermenting' ? [jarEvent(jar, question, 'pull')] : [];
}

function tastingEvent(tasting: Row<'tastings'>, question: string): CalendarEvent {
  return {
    uid: `${tasting.id}-taste@sidejar`,
    at: tasting.held_at,
    minutes: 60,
    summary: phrase`Taste: ${tasting.name}`,
    description: question,
    sequence: tasting.revision - 1,
  };
}

function fileName(question: string): string {
  const plain = question
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replaceAll(/^-|-$/g, '');
  return `${plain === '' ? 'trial' : plain}.ics`;
}

export const calendarHandlers: Handlers<'trials:calendar'> = {
  'trials:calendar'(kitchen, { trial: id }) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const now = kitchen.now().toISOString();
    const tastings = kitchen.read.all<Row<'tastings'>>(
      'SELECT * FROM tastings WHERE trial_id = ? AND closed_at IS NULL AND held_at > ? ORDER BY held_at',
      id,
      now,
    );
    const events = [
      ...trial.jarsWhole.flatMap((jar) => jarEvents(jar, trial.question)),
      ...tastings.map((tasting) => tastingEvent(tasting, trial.question)),
    ].sort((a, b) => a.at.localeCompare(b.at));
    if (events.length === 0) {
      throw new Failure(
        'refused',
        phrase`Nothing of this trial is still to come: its jars are all started and pulled.`,
        ['trial'],
      );
    }
    return { name: fileName(trial.question), text: calendarFile(events, now), events: events.length };
  },
};
