import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { type Boat, waterSchema } from '../../../core/document/boat-schema.ts';
import { withFloatCheck } from '../../../core/document/earlier-checks.ts';
import type { FloatCheck, HullCorrection } from '../../../core/document/hull-kinds-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { shellCentre } from '../../../core/hull/shell-centre.ts';
import {
  type Calibrated,
  calibrateHull,
  type NotCalibrated,
} from '../../../core/hydrostatics/calibrate-hull.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { today } from '../../language/dates.ts';
import type { Format } from '../../language/format.ts';
import { say } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';

interface Values {
  readonly bowMark: number | null;
  readonly sternMark: number | null;
  readonly aloneBow: number | null;
  readonly aloneStern: number | null;
  readonly loadedBow: number | null;
  readonly loadedStern: number | null;
  readonly massKg: number | null;
  readonly at: number | null;
}

function valuesOf(check: FloatCheck | null): Values {
  return {
    bowMark: check?.bowMarkXM ?? null,
    sternMark: check ? -check.sternMarkXM : null,
    aloneBow: check?.alone.bowM ?? null,
    aloneStern: check?.alone.sternM ?? null,
    loadedBow: check?.loaded.bowM ?? null,
    loadedStern: check?.loaded.sternM ?? null,
    massKg: check?.loaded.massKg ?? null,
    at: check?.loaded.atXM ?? null,
  };
}

/** The check as the boat keeps it; null while a figure is missing. */
function checkOf(e: Values): FloatCheck | null {
  const { bowMark, sternMark, aloneBow, aloneStern, loadedBow, loadedStern, massKg, at } = e;
  if (bowMark === null || sternMark === null || aloneBow === null || aloneStern === null) return null;
  if (loadedBow === null || loadedStern === null || massKg === null || at === null) return null;
  return {
    bowMarkXM: bowMark,
    sternMarkXM: -sternMark,
    alone: { bowM: aloneBow, sternM: aloneStern },
    loaded: { bowM: loadedBow, sternM: loadedStern, massKg, atXM: at },
  };
}

function workOut(boat: Boat, check: FloatCheck): Calibrated | NotCalibrated {
  const hull = hullOfBoat({ ...boat, correction: null });
  const boatCentre = boat.centre ? { x: boat.centre.xM, z: boat.centre.zM } : shellCentre(hull);
  return calibrateHull(hull, check, {
    boatMass: boat.massKg,
    boatCentre,
    waterDensity: waterDensity(waterSchema.parse({})),
  });
}

/** Entry of a float check, what it makes of the hull, keeping it with the boat, and taking it off again. */
export function FloatCheckForm({ boat }: { boat: Boat }) {
  const format = useFormat();
  const [values, setValues] = useState(() => valuesOf(boat.floatCheck));
  const [takenOn, setTakenOn] = useState(boat.floatCheck?.takenOn ?? today());
  const [kept, setKept] = useState(boat);
  const [answer, setAnswer] = useState<Calibrated | NotCalibrated | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const read = checkOf(values);
  const check = read && { ...read, ...(takenOn ? { takenOn } : {}) };

  async function keep(changed: Boat, said: string): Promise<void> {
    const result = await call('boats.save', { boat: changed });
    if (!result.ok) return setRefusal(result.error);
    setRefusal(null);
    setKept({ ...result.value.boat, id: result.value.id });
    announce(said);
  }

  function keepCheck(floatCheck: FloatCheck, { correction }: Calibrated): void {
    void keep(withFloatCheck(kept, { floatCheck, correction }), say('hull.check.kept'));
  }

  function enter(part: Partial<Values>): void {
    setValues((before) => ({ ...before, ...part }));
    setAnswer(null);
  }

  return (
    <section className="float-check">
      <h2>{say('hull.check')}</h2>
      <p className="soft">{say('hull.check.about')}</p>
      {kept.correction && (
        <CorrectionStands
          correction={kept.correction}
          onUndo={() =>
            void keep(withFloatCheck(kept, { floatCheck: null, correction: null }), say('hull.check.undone'))
          }
        />
      )}
      <div className="entry-row">
        <TextField label={say('hull.check.on')} type="date" value={takenOn} onChange={setTakenOn} />
      </div>
      <Readings values={values} onEnter={enter} />
      <p className="row">
        <button
          type="button"
          className="button"
          disabled={!check}
          onClick={() => check && setAnswer(workOut(kept, check))}
        >
          {say('hull.check.work')}
        </button>
        {!check && <span className="soft">{say('hull.check.unfinished')}</span>}
      </p>
      {answer && <p role="status">{answerText(answer, format)}</p>}
      {answer?.kind === 'calibrated' && check && (
        <p className="row">
          <button type="button" className="button chief" onClick={() => keepCheck(check, answer)}>
            {say('hull.check.keep')}
          </button>
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </section>
  );
}

/** That the hull is corrected by a float check, and the way to take it off again. */
function CorrectionStands({ correction, onUndo }: { correction: HullCorrection; onUndo: () => void }) {
  const format = useFormat();
  return (
    <p className="row">
      <span>
        {say('hull.check.stands', { residual: format.length(correction.residualM, { unit: 'mm' }) })}
      </span>
      <button type="button" className="button words" onClick={onUndo}>
        {say('hull.check.undo')}
      </button>
    </p>
  );
}

function Readings({ values, onEnter }: { values: Values; onEnter: (part: Partial<Values>) => void }) {
  const length = (key: keyof Values, label: string, [min, max]: readonly [number, number]) => (
    <MeasureField
      key={key}
      label={label}
      kind="length"
      value={values[key]}
      min={min}
      max={max}
      onEnter={(value) => onEnter({ [key]: value })}
    />
  );
  return (
    <div className="entry-grid">
      {length('bowMark', say('hull.check.bow-mark'), [0, 7])}
      {length('sternMark', say('hull.check.stern-mark'), [0, 7])}
      {length('aloneBow', say('hull.check.alone-bow'), [-0.1, 1])}
      {length('aloneStern', say('hull.check.alone-stern'), [-0.1, 1])}
      <MeasureField
        label={say('hull.check.mass')}
        kind="mass"
        value={values.massKg}
        min={1}
        max={500}
        onEnter={(massKg) => onEnter({ massKg })}
      />
      {length('at', say('hull.check.at'), [-7, 7])}
      {length('loadedBow', say('hull.check.loaded-bow'), [-0.1, 1])}
      {length('loadedStern', say('hull.check.loaded-stern'), [-0.1, 1])}
    </div>
  );
}

function answerText(answer: Calibrated | NotCalibrated, format: Format): string {
  const mm = (value: number) => format.length(value, { unit: 'mm' });
  if (answer.kind === 'not-calibrated') {
    return answer.reason === 'does-not-fit'
      ? say('hull.check.does-not-fit', { residual: mm(answer.residualM) })
      : say(`hull.check.${answer.reason}`);
  }
  const { fullness, foreAftFullness } = answer.correction;
  const { before } = answer;
  const misses = [before.alone.bow, before.alone.stern, before.loaded.bow, before.loaded.stern].map(Math.abs);
  const share = (value: number) => `${format.number(100 * Math.abs(value), { decimals: 1 })} %`;
  return say('hull.check.found', {
    fuller: say(fullness >= 0 ? 'hull.check.fuller' : 'hull.check.finer', { by: share(fullness) }),
    ends: say(foreAftFullness >= 0 ? 'hull.check.ends-bow' : 'hull.check.ends-stern', {
      by: share(foreAftFullness),
    }),
    residual: mm(answer.residualM),
    before: mm(Math.max(...misses)),
  });
}
