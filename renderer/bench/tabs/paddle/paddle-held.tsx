import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Paddle } from '../../../../core/document/seat-schema.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import type { QuantityId } from '../../../../core/evaluation/quantities.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import type { PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { MeasureField } from '../../../ui/fields/measure-field.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { PaddleFigures } from './paddle-figures.tsx';
import { type PaddleReader, sdOf } from './use-paddle.ts';

/** The values of the solved paddle that carry a doubt of their own. */
const SOLVED = [
  ['quantity.catchReach.name', 'catchReach', 'catchReach'],
  ['paddle.over-gunwale', 'handOverGunwale', 'handOverGunwale'],
  ['paddle.over-water', 'handOverWater', 'handOverWater'],
] as const satisfies readonly (readonly [string, QuantityId, keyof PaddleFit])[];

/** The fit with part of the seat's paddle set. */
export function withPaddle(fit: Fit, seat: number, part: Partial<Paddle>): Fit {
  const seats = fit.seats.map((at, index) =>
    index === seat ? { ...at, paddle: { ...at.paddle, ...part } } : at,
  );
  return { ...fit, seats };
}

/** Where the hands are on the shaft, how far they reach, and what they clear. */
export function PaddleHeld({ read }: { read: PaddleReader }) {
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const percent = (id: QuantityId) => (value: number) => format.quantity(id)(value, '1');
  const halfOf = (id: QuantityId, report: Report) => SIGMAS_95 * sdOf(report, id, seat);
  const doubt = (id: QuantityId) => (_: PaddleFit, report: Report) => {
    const half = halfOf(id, report);
    return say('paddle.plus-minus', { half: format.length(half, { half }) });
  };
  return (
    <>
      <PaddleFigures
        read={read}
        rows={[
          { name: say('paddle.blade-share'), value: (p) => percent('bladeShare')(p.bladeShare) },
          { name: say('paddle.lower-hand'), value: (p) => format.length(p.handSpacing) },
          { name: say('paddle.hand-share'), value: (p) => percent('handShare')(p.handShare) },
          { name: say('quantity.handAboveNeck.name'), value: (p) => format.length(p.handAboveNeck) },
          ...SOLVED.map(([name, id, key]) => ({
            name: say(name),
            value: (p: PaddleFit, report: Report) => format.length(p[key], { half: halfOf(id, report) }),
            beside: doubt(id),
          })),
        ]}
      />
      <div className="paddle-entries">
        <PaddleEntry
          entry="bladeAngleDeg"
          label={say('paddle.blade-angle')}
          kind="angle"
          min={-30}
          max={30}
        />
        <PaddleEntry entry="massKg" label={say('paddle.mass')} kind="mass" min={0.2} max={3} />
      </div>
    </>
  );
}

function PaddleEntry(props: {
  entry: 'bladeAngleDeg' | 'massKg';
  label: string;
  kind: 'angle' | 'mass';
  min: number;
  max: number;
}) {
  const { entry, label, ...field } = props;
  const document = useDocument();
  const seat = useFit((state) => state.seat);
  const value = useFit(({ fit }) => fit.seats[seat]!.paddle[entry]);
  const step = say('step.set', { what: label });
  return (
    <MeasureField
      {...field}
      label={label}
      stepped
      value={value}
      onEnter={(to) => document.apply(step, (fit) => withPaddle(fit, seat, { [entry]: to }))}
      onNudge={(to) => document.nudge(step, (fit) => withPaddle(fit, seat, { [entry]: to }))}
    />
  );
}
