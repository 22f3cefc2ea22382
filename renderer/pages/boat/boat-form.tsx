import { useMemo, useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { type Boat, boatSchema } from '../../../core/document/boat-schema.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { useFormValues } from '../../ui/form/use-form-values.ts';
import { returnAfterMaking } from '../new-fit/chosen.ts';
import { entriesOf } from './boat-entries.ts';
import { BoatFittings } from './boat-fittings.tsx';
import { boatOfEntries, hullOfEntries } from './boat-of-entries.ts';
import { HullEntries } from './hull-entries.tsx';
import { SeatMarks } from './seat-marks.tsx';
import { SectionsView } from './sections-view.tsx';
import { StationSketch } from './station-sketch.tsx';

const CLASSES = ['C1', 'C2', 'C4', 'none'] as const;

/** The boat's entries with its sections drawn beside them. Unfinished entries are there again next time. */
export function BoatForm({ boat, id }: { boat: Boat | null; id: string }) {
  const { formValues: entries, change, discard } = useFormValues(`boat.${id}`, entriesOf(boat));
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const format = useFormat();
  const hull = useMemo(() => hullOfEntries(entries), [entries]);

  async function save(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    const made = boatOfEntries(entries, boat);
    if ('problems' in made) return setProblems(made.problems);
    setProblems({});
    const result = await call('boats.save', { boat: made.boat });
    if (!result.ok) return setRefusal(result.error);
    discard();
    go(returnAfterMaking('boat', result.value.id) ?? { page: 'boats' });
  }

  return (
    <form className="entries boat-entries" onSubmit={save} noValidate>
      <div className="boat-columns">
        <div className="stack">
          <section>
            <h2>{say('boat.what')}</h2>
            <div className="entry-grid">
              <TextField
                label={say('boat.name')}
                value={entries.name}
                onChange={(name) => change({ name })}
                problem={entries.name.trim() === '' ? problems.name : null}
                required
              />
              <MeasureField
                label={say('boat.mass')}
                hint={say('boat.mass.hint')}
                kind="mass"
                value={entries.massKg}
                {...limitsOf(boatSchema.shape.massKg)}
                onEnter={(massKg) => change({ massKg })}
                problem={entries.massKg === null ? problems.massKg : null}
                required
              />
              <ChoiceField
                label={say('boat.class')}
                hint={say('boat.class.hint')}
                value={entries.boatClass}
                onChange={(boatClass) => change({ boatClass })}
                options={CLASSES.map((value) => ({
                  value,
                  name: value === 'none' ? say('boat.class.none') : value,
                }))}
              />
            </div>
          </section>
          <HullEntries entries={entries} onChange={change} />
        </div>
        <aside className="boat-sections" aria-label={say('boat.sections')}>
          <h2>{say('boat.sections')}</h2>
          <SectionsView source={'hull' in hull ? hull.hull : null} />
          {entries.hullKind === 'tape' && (
            <>
              <h2>{say('boat.sketch')}</h2>
              <StationSketch height={format.length(entries.beamHeightsM[0] ?? 0.05)} />
            </>
          )}
        </aside>
      </div>
      <SeatMarks entries={entries} problems={problems} onChange={change} />
      <BoatFittings entries={entries} problems={problems} onChange={change} />
      {problems.hull && 'problem' in hull && (
        <p className="field-problem" role="alert">
          {hull.problem}
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row">
        <button className="button chief" type="submit">
          {say('boat.save')}
        </button>
      </p>
    </form>
  );
}
