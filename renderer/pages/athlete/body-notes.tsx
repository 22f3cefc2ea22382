import { useMemo } from 'react';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { bodyNoteSentence } from '../../language/sentences.ts';
import { readForm } from '../../ui/form/form-rules.ts';
import { ATHLETE_RULES, type AthleteValues } from './athlete-values.ts';

/** What the body estimate has to say of these values: beyond the survey, a junior, a tape that disagrees. */
export function BodyNotes({ values }: { values: AthleteValues }) {
  const format = useFormat();
  const sentences = useMemo(() => {
    const named = { ...values, name: values.name || '–', side: values.side ?? 'left' };
    const made = readForm(ATHLETE_RULES, named);
    return made.ok
      ? bodyOfAthlete(made.document).notes.map((note) => bodyNoteSentence(note, format.value))
      : [];
  }, [values, format]);
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
