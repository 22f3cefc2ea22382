import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import type { BoatSectionProps } from './boat-values.ts';

/** Rake and curve of bow and stern: left empty, an end stands upright. */
export function StemFields({ form }: BoatSectionProps) {
  return (
    <details>
      <summary>{say('boat.stems')}</summary>
      <p className="soft">{say('boat.stems.about')}</p>
      <div className="entry-grid">
        <Field as="length" {...form.at('stems', 'bowRakeM')} label={say('boat.stems.bow-rake')} />
        <Field as="length" {...form.at('stems', 'bowCurveM')} label={say('boat.stems.bow-curve')} />
        <Field as="length" {...form.at('stems', 'sternRakeM')} label={say('boat.stems.stern-rake')} />
        <Field as="length" {...form.at('stems', 'sternCurveM')} label={say('boat.stems.stern-curve')} />
      </div>
    </details>
  );
}
