import { useMemo } from 'react';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Field } from '../../ui/form/field.tsx';
import { readForm } from '../../ui/form/form-rules.ts';
import { usualOptions } from '../new-fit/usual-options.ts';
import { boatRules } from './boat-rules.ts';
import type { BoatSectionProps, BoatValues } from './boat-values.ts';

/** Lengths that usual lines are drawn for, metres. */
const LENGTHS = { min: 3, max: 12 };

/** The numbers that usual lines are drawn from: class, length and greatest beam. */
export function UsualNumberFields({ form }: BoatSectionProps) {
  return (
    <>
      <Field as="choice" {...form.at('usualClass')} label={say('boat.class')} options={usualOptions()} />
      <Field
        as="length"
        {...form.at('lengthM')}
        {...LENGTHS}
        label={say('boat.class-check.greatest-length')}
      />
      <Field as="length" {...form.at('beamM')} label={say('boat.beam')} hint={say('boat.beam.hint')} />
    </>
  );
}

/** How far a boat of its class may be from the usual lines. */
export function UsualDoubtHint({ values }: { values: BoatValues }) {
  const format = useFormat();
  const spread = useMemo(() => {
    const made = readForm(boatRules(null), values.name === '' ? { ...values, name: '–' } : values);
    return made.ok ? hullSpread(made.document) : null;
  }, [values]);
  const small = (value: number) => format.length(value, { fine: true });
  return (
    <p className="soft">
      {say('boat.usual.about')}{' '}
      {spread &&
        say('boat.usual.doubt', {
          draft: small(spread.draft),
          trim: small(spread.trimRest),
          breadth: small(2 * spread.halfBreadth),
        })}
    </p>
  );
}
