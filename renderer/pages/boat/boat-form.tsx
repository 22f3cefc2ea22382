import { useMemo, useState } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/form/field.tsx';
import { Form } from '../../ui/form/form.tsx';
import { useForm } from '../../ui/form/use-form.ts';
import { ToDecide } from '../../ui/to-decide.tsx';
import { begunFor, returnAfterMaking } from '../new-fit/chosen.ts';
import { withBoatChange } from './boat-changes.ts';
import { BoatFittings } from './boat-fittings.tsx';
import { boatRules, hullOfValues } from './boat-rules.ts';
import { type BoatSectionProps, type BoatValues, boatValues } from './boat-values.ts';
import { HullFields } from './hull-fields.tsx';
import { SeatMarks } from './seat-marks.tsx';
import { SectionsView } from './sections-view.tsx';
import { StationSketch } from './station-sketch.tsx';
import { UsualNumberFields } from './usual-numbers.tsx';

const classes = () =>
  (['C1', 'C2', 'C4', 'none'] as const).map((value) => ({
    value,
    name: value === 'none' ? say('boat.class.none') : value,
  }));

/** A blank boat, or of the class and the numbers that were entered on the page of a first fit. */
function newBoatValues(): BoatValues {
  const blank = boatValues(null);
  const begun = begunFor('boat');
  if (!begun) return blank;
  const { boatClass: usualClass, lengthM, beamM, boatMassKg: massKg } = begun;
  const ofClass = { ...blank, ...withBoatChange(blank, { usualClass }, true) };
  return { ...ofClass, ...withBoatChange(ofClass, { lengthM, beamM, massKg }, true) };
}

/** The boat's form with its sections drawn beside it. Unfinished values are there again next time. */
export function BoatForm(props: {
  boat: Boat | null;
  id: string;
  /** It has just been saved: said until something is changed. */
  isSaved?: boolean;
  onChanged?: () => void;
}) {
  const { boat, id, isSaved = false, onChanged } = props;
  // What the form began with: the record may come anew while it is filled in.
  const [opened] = useState(boat ?? undefined);
  const form = useForm(boatRules(boat), {
    start: boat ? boatValues(boat) : newBoatValues(),
    keepAs: `boat.${id}`,
    shared: boat !== null,
    changing: (values, part) => withBoatChange(values, part, boat === null),
    save: (made, _, before) => call('boats.save', { boat: made, opened: opened && { ...opened, ...before } }),
    onSaved: (saved) => {
      const next = returnAfterMaking('boat', saved.id);
      if (next) return go(next);
      announce(say('boat.saved', { name: saved.boat.name }));
      if (boat) onChanged?.();
      else go({ page: 'boat', id: saved.id });
    },
  });
  const [asSaved] = useState(form.values);
  return (
    <Form
      form={form}
      className="entries boat-entries"
      buttons={
        <>
          <Button look="chief" type="submit">
            {say('trial.keep')}
          </Button>
          {isSaved && form.values === asSaved && (
            <>
              <span className="soft">{say('fits.kept')}</span>
              <ToDecide id={id} />
            </>
          )}
        </>
      }
    >
      <div className="boat-columns">
        <div className="stack">
          <BoatName form={form} />
          <HullFields form={form} boat={boat} />
        </div>
        <BoatDrawn values={form.values} />
      </div>
      <SeatsAndFittings form={form} boat={boat} />
    </Form>
  );
}

/** Seats, floorboard and fixings; folded away where a usual boat has filled them in. */
function SeatsAndFittings({ form, boat }: BoatSectionProps & { boat: Boat | null }) {
  const filledIn = boat === null && form.values.hullKind === 'usual';
  const fields = (
    <>
      <SeatMarks form={form} />
      <BoatFittings form={form} boat={boat} />
    </>
  );
  if (!filledIn) return fields;
  return (
    <details className="filled-in">
      <summary>{say('boat.filled-in')}</summary>
      {fields}
    </details>
  );
}

function BoatName({ form }: BoatSectionProps) {
  const usual = form.values.hullKind === 'usual';
  return (
    <section>
      <h2>{say('boat.what')}</h2>
      <div className="entry-grid">
        <Field as="text" {...form.at('name')} label={say('boat.name')} />
        {usual ? (
          <UsualNumberFields form={form} />
        ) : (
          <Field
            as="choice"
            {...form.at('boatClass')}
            label={say('boat.class')}
            hint={say('boat.class.hint')}
            options={classes()}
          />
        )}
        <Field as="mass" {...form.at('massKg')} label={say('boat.mass')} hint={say('boat.mass.hint')} />
      </div>
    </section>
  );
}

/** The hull's sections as far as they are known, and what a tape reads of one. */
function BoatDrawn({ values }: { values: BoatValues }) {
  const format = useFormat();
  const hull = useMemo(() => hullOfValues(values), [values]);
  return (
    <aside className="boat-sections" aria-label={say('boat.sections')}>
      <h2>{say('boat.sections')}</h2>
      {values.hullKind === 'offsets' && !('hull' in hull) ? (
        <p className="soft">{say('boat.offsets.none')}</p>
      ) : (
        <SectionsView source={'hull' in hull ? hull.hull : null} />
      )}
      {values.hullKind === 'tape' && (
        <>
          <h2>{say('boat.sketch')}</h2>
          <StationSketch height={format.length(values.beamHeightsM[0] ?? 0.05)} />
        </>
      )}
    </aside>
  );
}
