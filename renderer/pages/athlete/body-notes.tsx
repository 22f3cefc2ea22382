import { useMemo } from 'react';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { bodyNoteSentence } from '../../../core/findings/sentences.ts';
import { say } from '../../language/messages.ts';
import { type AthleteEntries, athleteOf } from './athlete-entries.ts';

/** What the body estimate has to say of these entries: beyond the survey, a junior, a tape that disagrees. */
export function BodyNotes({ entries }: { entries: AthleteEntries }) {
  const sentences = useMemo(() => {
    const made = athleteOf(
      { ...entries, name: entries.name || '–', side: entries.side ?? 'left' },
      undefined,
    );
    return 'athlete' in made ? bodyOfAthlete(made.athlete).notes.map(bodyNoteSentence) : [];
  }, [entries]);
  if (sentences.length === 0) return null;
  return (
    <div className="body-notes" role="status">
      <h3 className="lettering">{say('athlete.notes')}</h3>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
