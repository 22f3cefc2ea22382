import { rankOrders, type SeatingOrder } from '../../../../core/crew/compare-orders.ts';
import { reseat } from '../../../../core/crew/swap-seats.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { useFormat } from '../../../display/use-display.ts';
import { useJob } from '../../../jobs/use-job.ts';
import { say } from '../../../language/messages.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { orderText } from '../../crew-names.ts';

/** Every seating order in a table, best first, judged in a worker with progress and a way to stop. */
export function CrewOrders() {
  const fit = useFit((state) => state.fit);
  const { state, start, stop } = useJob('compareSeatingOrders');
  const judged = state.kind === 'idle' ? [] : state.progress;
  const latest = judged.at(-1);
  const current = state.kind !== 'idle' && state.input === fit;

  return (
    <>
      {state.kind === 'working' && (
        <p className="row">
          <progress max={latest?.all ?? 1} value={latest?.done ?? 0} aria-label={say('crew.orders')} />
          <span>{say('crew.orders.progress', { done: latest?.done ?? 0, all: latest?.all ?? 0 })}</span>
          <button type="button" className="button words" onClick={stop}>
            {say('crew.orders.stop')}
          </button>
        </p>
      )}
      {state.kind !== 'working' && !(current && state.kind === 'done') && (
        <button type="button" className="button" onClick={() => start(fit)}>
          {say('crew.orders.compare')}
        </button>
      )}
      {current && judged.length > 0 && (
        <OrdersTable fit={fit} ranked={rankOrders(judged.map(({ order }) => order))} />
      )}
    </>
  );
}

function OrdersTable({ fit, ranked }: { fit: Fit; ranked: readonly SeatingOrder[] }) {
  const format = useFormat();
  const mm = (value: number | null) =>
    value === null ? '–' : format.length(value, { unit: 'mm', signed: true });
  return (
    <DataTable
      className="crew-table"
      caption={say('crew.orders.caption')}
      rows={ranked}
      rowKey={({ order }) => order.join()}
      columns={[
        { title: say('crew.orders.order'), isName: true, cell: ({ order }) => orderText(fit, order) },
        { title: say('crew.bow'), cell: ({ trim }) => mm(trim) },
        { title: say('crew.side'), cell: ({ offCentre }) => mm(offCentre) },
        { title: say('crew.orders.neighbours'), cell: ({ sameSideNeighbours }) => sameSideNeighbours },
        {
          title: say('crew.orders.take'),
          titleHidden: true,
          cell: ({ order }) => <TakeOrder fit={fit} order={order} />,
        },
      ]}
    />
  );
}

function TakeOrder({ fit, order }: { fit: Fit; order: SeatingOrder['order'] }) {
  const document = useDocument();
  if (order.every((from, to) => from === to)) return say('crew.orders.now');
  const text = orderText(fit, order);
  return (
    <button
      type="button"
      className="button words"
      aria-label={say('crew.orders.take.of', { order: text })}
      onClick={() => document.apply(say('crew.orders.step', { order: text }), (now) => reseat(now, order))}
    >
      {say('crew.orders.take')}
    </button>
  );
}
