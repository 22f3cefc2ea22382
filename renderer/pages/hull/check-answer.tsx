import type { Format } from '../../../app/language/format.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { narrowedBy } from '../../../core/evaluation/narrowed-by.ts';
import type { Calibrated, NotCalibrated } from '../../../core/hydrostatics/calibrate-hull.ts';
import { withUnit } from '../../../core/text/with-unit.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

/** The figures whose narrowing is shown; the others follow from them. */
const SHOWN_FIGURES = ['draft', 'trimRest'] as const;

/** What a float check makes of the hull and how much surer it makes draft and trim, or why it makes nothing of it. */
export function CheckAnswer({ boat, answer }: { boat: Boat; answer: Calibrated | NotCalibrated }) {
  const format = useFormat();
  return (
    <div role="status">
      <p>{answerText(answer, format)}</p>
      {answer.kind === 'calibrated' && <Narrowed boat={boat} correction={answer.correction} />}
    </div>
  );
}

function Narrowed({ boat, correction }: { boat: Boat; correction: Calibrated['correction'] }) {
  const format = useFormat();
  const narrowed = narrowedBy({ ...boat, correction: null }, { ...boat, correction });
  const shown = SHOWN_FIGURES.flatMap((figure) => narrowed.find((one) => one.figure === figure) ?? []);
  if (shown.length === 0) return <p>{say('hull.check.narrowed.none')}</p>;
  return (
    <ul>
      {shown.map(({ figure, before, after }) => (
        <li key={figure}>
          {say('hull.check.narrowed', {
            figure: say(`boat.known.${figure === 'draft' ? 'draft' : 'trimRest'}`),
            before: format.length(before, { fine: true }),
            after: format.length(after, { fine: true }),
          })}
        </li>
      ))}
    </ul>
  );
}

function answerText(answer: Calibrated | NotCalibrated, format: Format): string {
  const small = (value: number) => format.length(value, { fine: true });
  if (answer.kind === 'not-calibrated') {
    return answer.reason === 'does-not-fit'
      ? say('hull.check.does-not-fit', { residual: small(answer.residualM) })
      : say(`hull.check.${answer.reason}`);
  }
  const { fullness, foreAftFullness } = answer.correction;
  const { before } = answer;
  const misses = [before.alone.bow, before.alone.stern, before.loaded.bow, before.loaded.stern].map(Math.abs);
  const share = (value: number) => withUnit(format.number(100 * Math.abs(value), { decimals: 1 }), '%');
  return say('hull.check.found', {
    fuller: say(fullness >= 0 ? 'hull.check.fuller' : 'hull.check.finer', { by: share(fullness) }),
    ends: say(foreAftFullness >= 0 ? 'hull.check.ends-bow' : 'hull.check.ends-stern', {
      by: share(foreAftFullness),
    }),
    residual: small(answer.residualM),
    before: small(Math.max(...misses)),
  });
}
