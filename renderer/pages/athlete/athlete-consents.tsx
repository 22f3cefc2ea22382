import { CONSENTS } from '../../../core/document/athlete-schema.ts';
import { isMinor } from '../../../core/document/consent.ts';
import { today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import type { AthleteValues } from './athlete-values.ts';

/** Who consented to what for a minor, and when. Not shown for an adult of whom nothing is noted. */
export function AthleteConsents({ form }: { form: FormState<AthleteValues> }) {
  const { bornOn, consent } = form.values;
  const minor = isMinor(bornOn ? { bornOn } : {}, today());
  const noted = CONSENTS.some((one) => consent[one].by || consent[one].on);
  if (minor === false && !noted) return null;
  return (
    <section>
      <h2>{say('consent.title')}</h2>
      <p className="soft">
        {words().sentences([say('consent.about'), ...(minor === null ? [say('consent.unknown-age')] : [])])}
      </p>
      {CONSENTS.map((one) => (
        <fieldset key={one} className="entry-row consent">
          <legend>{say(`consent.${one}`)}</legend>
          <Field as="text" {...form.at('consent', one, 'by')} label={say('consent.by')} />
          <Field as="date" {...form.at('consent', one, 'on')} label={say('consent.on')} />
        </fieldset>
      ))}
    </section>
  );
}
