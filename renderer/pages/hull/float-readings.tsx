import type { Boat } from '../../../core/document/boat-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { shellCentre } from '../../../core/hull/shell-centre.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import type { FormState } from '../../ui/form/use-form.ts';
import type { FloatValues } from './float-check-rules.ts';

const waters = () =>
  (['fresh', 'brackish', 'salt'] as const).map((value) => ({
    value,
    name: say(`measures.water.${value}`),
  }));

/** The entries of a float check in the order in which they are read: day and water, marks, alone, loaded. */
export function FloatReadings({ form, boat }: { form: FormState<FloatValues>; boat: Boat }) {
  const format = useFormat();
  const estimated = shellCentre(hullOfBoat(boat)).x;
  const length = (key: Exclude<keyof FloatValues, 'takenOn' | 'water'>, label: string, hint?: string) => (
    <Field as="length" {...form.at(key)} label={label} hint={hint} />
  );
  return (
    <>
      <div className="entry-grid">
        <Field as="date" {...form.at('takenOn')} label={say('hull.check.on')} />
        <Field as="choice" {...form.at('water')} label={say('measures.water')} options={waters()} />
        <Field as="number" {...form.at('temperatureC')} label={say('measures.water.temperature')} />
        {length(
          'centreXM',
          say('hull.check.centre'),
          say('hull.check.centre.hint', { estimate: format.length(estimated, { signed: true }) }),
        )}
      </div>
      <div className="entry-grid">
        {length('bowMark', say('hull.check.bow-mark'))}
        {length('sternMark', say('hull.check.stern-mark'))}
        {length('aloneBow', say('hull.check.alone-bow'))}
        {length('aloneStern', say('hull.check.alone-stern'))}
        <Field as="mass" {...form.at('massKg')} label={say('hull.check.mass')} />
        {length('at', say('hull.check.at'))}
        {length('loadedBow', say('hull.check.loaded-bow'))}
        {length('loadedStern', say('hull.check.loaded-stern'))}
      </div>
    </>
  );
}
