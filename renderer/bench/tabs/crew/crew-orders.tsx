import { rankOrders, type SeatingOrder } from '../../../../core/crew/compare-orders.ts';
import { reseat } from '../../../../core/crew/swap-seats.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
import { usualSpeed } from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { useJob } from '../../../jobs/use-job.ts';
import { say, words } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { ProgressLine } from '../../../ui/progress-line.tsx';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { orderText } from '../../crew-names.ts';
import { withDoubt } from '../under-way/costs-table.tsx';

/** Every seating order in a table, best first, judged in a worker with progress and a way to stop. */
export function CrewOrders() {
  const fit = useFit((state) => state.fit);
  const { state, start, stop } = useJob('compareSeatingOrders');
  const judged = state.kind === 'idle' ? [] : state.progress;
  const { done, all } = judged.at(-1) ?? { done: 0, all: 0 };
  const current = state.kind !== 'idle' && state.input === fit;

  return (
    <>
      {state.kind === 'working' && (
        <ProgressLine
          name={say('crew.orders')}
          text={say('crew.orders.progress', { done, all })}
          share={{ done, of: all }}
          onStop={stop}
        />
      )}
      {state.kind !== 'working' && !(current && state.kind === 'done') && (
        <Button onClick={() => start(fit)}>{say('crew.orders.compare')}</Button>
      )}
      {current && judged.length > 0 && (
        <>
          <OrdersTable fit={fit} ranked={rankOrders(judged.map(({ order }) => order))} />
          {state.kind === 'done' && (
            <Worth seats={fit.seats.length} orders={judged.map(({ order }) => order)} />
          )}
        </>
      )}
    </>
  );
}

const isPresent = (order: SeatingOrder['order']) => order.every((from, to) => from === to);

function OrdersTable({ fit, ranked }: { fit: Fit; ranked: readonly SeatingOrder[] }) {
  const format = useFormat();
  const mm = (value: number | null) =>
    value === null ? '–' : format.length(value, { fine: true, signed: true });
  return (
    <DataTable
      className="crew-table"
      caption={say('crew.orders.caption')}
      rows={ranked}
      rowKey={({ order }) => order.join()}
      columns={[
        {
          title: say('crew.orders.order'),
          isName: true,
          cell: ({ order }) => (
            <>
              {orderText(fit, order)} <TakeOrder fit={fit} order={order} />
            </>
          ),
        },
        { title: say('crew.bow'), cell: ({ trim }) => mm(trim) },
        { title: say('crew.side'), cell: ({ offCentre }) => mm(offCentre) },
        { title: say('crew.orders.sinkage'), cell: ({ sinkage }) => mm(sinkage) },
        {
          title: say('crew.orders.water'),
          cell: ({ water, order }) =>
            water && !isPresent(order) ? withDoubt(water.newtons, water.sd, format) : '–',
        },
        { title: say('crew.orders.neighbours'), cell: ({ sameSideNeighbours }) => sameSideNeighbours },
      ]}
    />
  );
}

/** A difference of less than this share of the resistance is no reason to change seats. */
const WORTH = 0.01;

/** What the order is worth on the water: the greatest difference from the present one. */
function Worth({ seats, orders }: { seats: number; orders: readonly SeatingOrder[] }) {
  const format = useFormat();
  const costs = orders.flatMap(({ water }) => water ?? []);
  if (costs.length === 0) return null;
  const most = costs.reduce((a, b) => (Math.abs(b.newtons) > Math.abs(a.newtons) ? b : a));
  const newtons = Math.abs(most.newtons);
  const half = SIGMAS_95 * most.sd;
  /** The share and the seconds have digits by the same doubt as the newtons. */
  const goingWith = (value: number) =>
    format.number(Math.abs(value), {
      decimals: 2,
      half: newtons === 0 ? 0 : (half * Math.abs(value)) / newtons,
    });
  const worth = say('crew.orders.worth', {
    speed: format.number(usualSpeed(seats), { decimals: 1 }),
    newtons: say('under-way.with-doubt', {
      value: format.number(newtons, { decimals: 2, half }),
      doubt: format.number(half, { decimals: 2, half }),
    }),
    share: goingWith(100 * most.share),
    seconds: goingWith(most.seconds.at(-1)!),
  });
  const isSmall = Math.abs(most.share) < WORTH;
  return <p>{isSmall ? words().sentences([worth, say('crew.orders.worth.advice')]) : worth}</p>;
}

function TakeOrder({ fit, order }: { fit: Fit; order: SeatingOrder['order'] }) {
  const document = useDocument();
  if (isPresent(order)) return say('crew.orders.now');
  const text = orderText(fit, order);
  return (
    <Button
      look="words"
      aria-label={say('crew.orders.take.of', { order: text })}
      onClick={() => document.apply(say('crew.orders.step', { order: text }), (now) => reseat(now, order))}
    >
      {say('notes.take')}
    </Button>
  );
}
