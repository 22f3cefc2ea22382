import { useState } from 'react';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallError } from '../../../app/contract/result.ts';
import { measuredFit } from '../../../core/photograph/measured-fit.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import type { SeenPosture } from '../../../core/photograph/posture-from-marks.ts';
import type { SolvedCamera } from '../../../core/photograph/solve-camera.ts';
import { STANCE_ANGLES, STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, words } from '../../language/messages.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { AfloatLine } from './afloat-line.tsx';
import { AngleTable } from './angle-table.tsx';
import { Apply } from './apply.tsx';
import { DifferenceWords } from './difference-words.tsx';
import type { DisagreeingMark, PictureReading } from './use-reading.ts';

/** What the marks say: where the camera stood, how the athlete kneels, what contradicts the body; and taking it into the fit. */
export function ReadResult(props: {
  opened: OpenedFit;
  study: PhotoStudy;
  reading: PictureReading;
  /** The reading is of the marks as they stand. */
  isCurrent: boolean;
  disagreeing: readonly DisagreeingMark[];
  onLeaveOut: () => void;
  onTaken: (study: PhotoStudy) => Promise<void>;
}) {
  const { opened, study, reading } = props;
  const [refusal, setRefusal] = useState<CallError | null>(null);
  if (reading.kind !== 'read') return null;
  const { camera, posture, plan, afloat } = reading.answer;

  async function take(seen: SeenPosture): Promise<void> {
    const fit = measuredFit(opened.fit, {
      seat: study.seat,
      phase: study.moment,
      posture: seen,
      ...(study.takenOn && { takenOn: study.takenOn }),
    });
    const saved = await call('drafts.save', { id: opened.id, fit, basedOn: opened.draftSavedAt });
    setRefusal(saved.ok ? null : saved.error);
    if (!saved.ok) return;
    announce(say('photograph.taken'));
    await props.onTaken({ ...study, confirmed: true, result: resultOf(seen) });
  }

  return (
    <section className="stack" aria-live="polite">
      <h3>{say('photograph.moment')}</h3>
      <CameraLine camera={camera} />
      <AfloatLine afloat={afloat} />
      {posture?.kind === 'tooFew' && <p>{say('photograph.posture.too-few', { needed: posture.needed })}</p>}
      {posture?.kind === 'measured' && (
        <>
          {posture.unsettled.length === 0 && <Contradictions posture={posture} />}
          {plan && <DifferenceWords plan={plan} posture={posture} />}
          {plan && <AngleTable plan={plan} posture={posture} />}
          <Apply {...props} isSettled={posture.unsettled.length === 0} onApply={() => void take(posture)} />
        </>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </section>
  );
}

function resultOf({ angles, sd, topHandOver, measuredSd }: SeenPosture): NonNullable<PhotoStudy['result']> {
  const rounded = (value: number) => Math.round(1e5 * value) / 1e5;
  return {
    angles: Object.fromEntries(
      STANCE_ANGLES.map((name) => [name, { value: rounded(angles[name]), sd: rounded(sd[name]) }]),
    ),
    topHandOver: { value: rounded(topHandOver.value), sd: rounded(topHandOver.sd) },
    readings: Object.fromEntries(
      STANCE_UNKNOWNS.flatMap((name) => {
        const own = measuredSd[name];
        return own === undefined ? [] : [[name, { value: rounded(angles[name]), sd: rounded(own) }]];
      }),
    ),
  };
}

/** Boat points farther off than this want another look, root mean square, millimetres: more than marks by hand and an estimated hull leave (estimate). */
const FAR_OFF_MM = 40;

/** Where the camera stood and how well the boat's points agree; or what is missing. */
function CameraLine({ camera }: { camera: SolvedCamera }) {
  const format = useFormat();
  if (camera.kind === 'tooFew') return <p>{say('photograph.camera.too-few')}</p>;
  if (camera.kind === 'degenerate') return <p>{say(`photograph.camera.${camera.why}`)}</p>;
  if (camera.kind !== 'solved') return <p className="error-box">{say('photograph.camera.inconsistent')}</p>;
  const found = say(`photograph.camera.${camera.model}`, {
    px: format.number(camera.residualPx, { decimals: 1 }),
    mm: format.number(camera.residualMm, { decimals: 0 }),
  });
  const isFarOff = camera.residualMm > FAR_OFF_MM;
  return <p>{isFarOff ? words().sentences([found, say('photograph.camera.inconsistent')]) : found}</p>;
}

function Contradictions({ posture }: { posture: SeenPosture }) {
  const format = useFormat();
  if (posture.contradictions.length === 0) return null;
  return (
    <div role="note">
      {posture.contradictions.map(({ length, share }) => (
        <p key={length}>
          {say('photograph.contradiction', {
            length: say(`photograph.length.${length}`),
            percent: format.number(Math.abs(100 * share), { decimals: 0 }),
            direction: share > 0 ? 'longer' : 'shorter',
          })}
        </p>
      ))}
    </div>
  );
}
