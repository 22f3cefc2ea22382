import { fitSchema } from '../../../core/document/fit-schema.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';
import { EnteredText } from '../../ui/fields/entered-text.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { useDocument, useFit } from '../bench-context.tsx';

const WATER_C = { min: -2, max: 40 };
const HEEL_DEG = { min: -30, max: 30 };

/** What concerns the whole boat: the fit's name and notes, the water, the heel it is looked at. */
export function BoatMeasures() {
  const fitId = useFit((state) => state.fitId);
  return (
    <>
      <div className="boat-measures">
        <FitName />
        <Water />
        <FitNotes />
      </div>
      {fitId !== '' && (
        <p>
          <a className="button" href={hrefOf({ page: 'transfer', id: fitId })}>
            {say('do.transfer')}
          </a>
        </p>
      )}
    </>
  );
}

function FitName() {
  const document = useDocument();
  const name = useFit(({ fit }) => fit.name);
  return (
    <EnteredText
      label={say('measures.fit-name')}
      value={name}
      read={(typed) => fitSchema.shape.name.safeParse(typed).data ?? null}
      onEnter={(to) => document.apply(say('step.rename'), (fit) => ({ ...fit, name: to }))}
    />
  );
}

const waters = () =>
  (['fresh', 'brackish', 'salt'] as const).map((value) => ({
    value,
    name: say(`measures.water.${value}`),
  }));

function Water() {
  const document = useDocument();
  const water = useFit(({ fit }) => fit.water);
  const heelDeg = useFit(({ fit }) => fit.heelDeg);
  return (
    <>
      <ChoiceField
        label={say('measures.water')}
        value={water.kind}
        onChange={(kind) =>
          document.apply(say('step.water'), (fit) => ({ ...fit, water: { ...fit.water, kind } }))
        }
        options={waters()}
      />
      <MeasureField
        label={say('measures.water.temperature')}
        kind="number"
        stepped
        value={water.temperatureC}
        {...WATER_C}
        onEnter={(temperatureC) =>
          document.nudge(say('step.water'), (fit) => ({ ...fit, water: { ...fit.water, temperatureC } }))
        }
      />
      <MeasureField
        label={say('measures.heel')}
        term="heel"
        kind="angle"
        stepped
        value={heelDeg}
        {...HEEL_DEG}
        onEnter={(to) => document.nudge(say('step.heel'), (fit) => ({ ...fit, heelDeg: to }))}
      />
    </>
  );
}

function FitNotes() {
  const document = useDocument();
  const notes = useFit(({ fit }) => fit.notes);
  return (
    <EnteredText
      label={say('measures.fit-notes')}
      value={notes}
      lines={2}
      maxLength={10_000}
      onEnter={(to) => document.apply(say('step.notes'), (fit) => ({ ...fit, notes: to }))}
    />
  );
}
