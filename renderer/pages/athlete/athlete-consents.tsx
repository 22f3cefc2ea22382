import { CONSENTS, type Consent } from '../../../core/fit/athlete-schema.ts';
import { isMinor } from '../../../core/fit/consent.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { TextField } from '../../ui/fields/text-field.tsx';
import type { AthleteEntries } from './athlete-entries.ts';

type Consents = AthleteEntries['consent'];

/** Who consented to what for a minor, and when. Not shown for an adult of whom nothing is noted. */
export function AthleteConsents(props: {
  entries: AthleteEntries;
  problems: Readonly<Record<string, string>>;
  onChange: (consent: Consents) => void;
}) {
  const { entries, problems, onChange } = props;
  const minor = isMinor(entries.bornOn ? { bornOn: entries.bornOn } : {}, today());
  const noted = CONSENTS.some((consent) => entries.consent[consent].by || entries.consent[consent].on);
  if (minor === false && !noted) return null;
  const set = (consent: Consent, part: Partial<Consents[Consent]>) =>
    onChange({ ...entries.consent, [consent]: { ...entries.consent[consent], ...part } });
  return (
    <section>
      <h2>{say('consent.title')}</h2>
      <p className="soft">
        {say('consent.about')} {minor === null && say('consent.unknown-age')}
      </p>
      {CONSENTS.map((consent) => (
        <fieldset key={consent} className="entry-row consent">
          <legend>{say(`consent.${consent}`)}</legend>
          <TextField
            label={say('consent.by')}
            value={entries.consent[consent].by}
            onChange={(by) => set(consent, { by })}
            problem={problems[`consent.${consent}.by`]}
          />
          <TextField
            label={say('consent.on')}
            type="date"
            value={entries.consent[consent].on}
            onChange={(on) => set(consent, { on })}
            problem={problems[`consent.${consent}.on`]}
          />
        </fieldset>
      ))}
    </section>
  );
}
