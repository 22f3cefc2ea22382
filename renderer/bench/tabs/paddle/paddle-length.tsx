import type { Format } from '../../../../app/language/format.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { mainReason } from '../../../../core/paddle/length-changes.ts';
import { topHandSd } from '../../../../core/paddle/mid-drive.ts';
import type { LengthPart, PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import { toDegrees } from '../../../../core/units/angle.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say, words } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';

import { withStroke } from '../stroke/stroke-inputs.tsx';
import { LiveText } from '../values/live-text.tsx';
import { PaddleFigures, type PaddleRow } from './paddle-figures.tsx';
import { type PaddleReader, sdOf } from './use-paddle.ts';

const PARTS: readonly LengthPart['part'][] = ['blade', 'knee', 'thigh', 'trunk', 'hand'];

type DoubtedLength = 'paddleByStance' | 'paddleDifference';

/** Both lengths, what they are made of, and why they differ. */
export function PaddleLength({ read }: { read: PaddleReader }) {
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const { length } = format;
  const halfOf = (id: DoubtedLength, report: Report) => SIGMAS_95 * sdOf(report, id, seat);
  const doubt = (id: DoubtedLength) => (_: PaddleFit, report: Report) => {
    const half = halfOf(id, report);
    return say('paddle.plus-minus', { half: length(half, { half }) });
  };
  const rows: readonly PaddleRow[] = [
    {
      name: say('paddle.by-stature'),
      value: ({ byStature }) => length(byStature.lengthM),
      beside: ({ byStature: { leastM, mostM } }) =>
        say('band.between', { least: length(leastM), most: length(mostM) }),
    },
    {
      name: say('paddle.by-stance'),
      value: ({ byStance }, report) => length(byStance.lengthM, { half: halfOf('paddleByStance', report) }),
      beside: doubt('paddleByStance'),
    },
    {
      name: say('paddle.difference'),
      value: ({ difference }, report) =>
        length(difference, { signed: true, half: halfOf('paddleDifference', report) }),
      beside: doubt('paddleDifference'),
    },
    {
      name: say('paddle.this'),
      value: ({ byStance, againstStance }) => length(byStance.lengthM + againstStance),
      beside: ({ againstStance }) =>
        say(`paddle.against-stance.${againstStance < 0 ? 'shorter' : 'longer'}`, {
          by: length(Math.abs(againstStance)),
        }),
    },
  ];
  return (
    <>
      <PaddleFigures read={read} rows={rows} />
      <p className="soft">{say('paddle.stature-rule')}</p>
      <p>
        <LiveText write={(fit, report) => whyLengthText(read(fit, report), { fit, report, seat, format })} />
      </p>
      <HandHeight read={read} />
      <h2 className="lettering">{say('paddle.parts')}</h2>
      <Parts read={read} />
      <p className="soft">{say('paddle.parts.about')}</p>
    </>
  );
}

/** Why the two lengths differ: what this stance changes against the usual one; first, why a paddle is longer than its paddler. */
export function whyLengthText(
  paddle: PaddleFit | null,
  { fit, report, seat, format }: { fit: Fit; report: Report; seat: number; format: Format },
): string {
  const body = report.seats[seat]?.body;
  if (!paddle || !body) return '';
  const { changes } = paddle;
  const { modelled } = paddle.topHand;
  const half = SIGMAS_95 * topHandSd({ body, seat: fit.seats[seat]! });
  const measured = fit.seats[seat]!.stroke.topHandOverM !== undefined;
  const by = (change: number) => format.length(change, { signed: true });
  const why = say('paddle.why', {
    knee: by(changes.knee),
    lean: by(changes.lean),
    hand: by(changes.hand),
    body: by(changes.body),
    model: format.length(modelled.over, { half }),
    modelLevel: say(`level.${modelled.level}`),
    sure: say(measured ? 'paddle.why.measured' : 'paddle.why.estimate', {
      half: format.length(half, { half }),
    }),
  });
  if (!paddle.longerThanAthlete) return why;
  const longer = say('paddle.longer', { reason: say(`paddle.longer.${mainReason(changes)}`) });
  return words().sentences([longer, why]);
}

/** The parts of the length by the stance, each as long as it is. Bars are drawn after a gesture, numbers follow the hand. */
function Parts({ read }: { read: PaddleReader }) {
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const paddle = read(fit, report);
  if (!paddle) return null;
  const lengthOf = (of: PaddleFit, part: LengthPart['part']) =>
    of.byStance.parts.find((p) => p.part === part)!.lengthM;
  const longest = Math.max(...paddle.byStance.parts.map(({ lengthM }) => lengthM));
  return (
    <ul className="paddle-parts">
      {PARTS.map((part) => (
        <li key={part} data-part={part}>
          <span className="paddle-part-name">
            {part === 'trunk' ? (
              <LiveText
                write={(...state) => {
                  const pitch = read(...state)?.midDrive.trunkPitch;
                  return say('paddle.part.trunk', {
                    pitch: pitch === undefined ? '–' : format.degrees(toDegrees(pitch)),
                  });
                }}
              />
            ) : (
              say(`paddle.part.${part}`)
            )}
          </span>
          <span className="paddle-bar" aria-hidden="true">
            <span style={{ width: `${Math.max(0, (100 * lengthOf(paddle, part)) / longest)}%` }} />
          </span>
          <LiveText
            className="paddle-part-length"
            write={(...state) => {
              const now = read(...state);
              return now ? format.length(lengthOf(now, part)) : '–';
            }}
          />
        </li>
      ))}
    </ul>
  );
}

/** The height of the top hand, measured: it settles which of the two lengths is nearer. */
function HandHeight({ read }: { read: PaddleReader }) {
  const document = useDocument();
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const own = useFit(({ fit }) => fit.seats[seat]!.stroke.topHandOverM ?? null);
  const estimate = useFit(({ fit, report }) => {
    const at = read(fit, report);
    return own === null ? (at?.midDrive.topHandOver ?? null) : null;
  });
  const what = say('paddle.hand-height');
  const step = say('step.set', { what });
  const set = (value: number | null) => (fit: Fit) => withStroke(fit, { seat, entry: 'topHandOverM' }, value);
  return (
    <MeasureField
      label={what}
      kind="length"
      stepped
      value={own}
      from={estimate ?? undefined}
      min={-0.3}
      max={0.6}
      hint={
        estimate === null ? undefined : say('paddle.hand-height.usual', { value: format.length(estimate) })
      }
      onEnter={(value) => document.apply(step, set(value))}
      onNudge={(value) => document.nudge(step, set(value))}
      onEmpty={() => document.apply(step, set(null))}
    />
  );
}
