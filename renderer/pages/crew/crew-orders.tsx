import { useState } from 'react';
import type { SeatingOrder } from '../../../core/crew/compare-orders.ts';
import { reseat } from '../../../core/crew/swap-seats.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { useDocument, useFit } from '../bench/bench-context.tsx';
import { orderText } from './crew-names.ts';
import { useOrders } from './use-orders.ts';

/** Every seating order in a table, best first, judged in a worker with progress and a way to stop. */
export function CrewOrders() {
  const fit = useFit((state) => state.fit);
  const [compared, setCompared] = useState<Fit | null>(null);
  const orders = useOrders();
  const current = compared === fit;

  function start(): void {
    setCompared(fit);
    orders.start(fit);
  }

  return (
    <>
      {orders.working && (
        <p className="row">
          <progress max={orders.all || 1} value={orders.done} aria-label={say('crew.orders')} />
          <span>{say('crew.orders.progress', { done: orders.done, all: orders.all })}</span>
          <button type="button" className="button words" onClick={orders.stop}>
            {say('crew.orders.stop')}
          </button>
        </p>
      )}
      {!orders.working && !current && (
        <button type="button" className="button" onClick={start}>
          {say('crew.orders.compare')}
        </button>
      )}
      {current && orders.ranked.length > 0 && <OrdersTable fit={fit} ranked={orders.ranked} />}
    </>
  );
}

function OrdersTable({ fit, ranked }: { fit: Fit; ranked: readonly SeatingOrder[] }) {
  const document = useDocument();
  const format = useFormat();
  const mm = (value: number | null) =>
    value === null ? '–' : format.length(value, { unit: 'mm', signed: true });
  return (
    <table className="crew-table">
      <caption>{say('crew.orders.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('crew.orders.order')}</th>
          <th scope="col">{say('crew.bow')}</th>
          <th scope="col">{say('crew.side')}</th>
          <th scope="col">{say('crew.orders.neighbours')}</th>
          <th scope="col">
            <span className="only-spoken">{say('crew.orders.take')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {ranked.map(({ order, trim, offCentre, sameSideNeighbours }) => {
          const text = orderText(fit, order);
          const isNow = order.every((from, to) => from === to);
          return (
            <tr key={order.join()}>
              <th scope="row">{text}</th>
              <td>{mm(trim)}</td>
              <td>{mm(offCentre)}</td>
              <td>{sameSideNeighbours}</td>
              <td>
                {isNow ? (
                  say('crew.orders.now')
                ) : (
                  <button
                    type="button"
                    className="button words"
                    aria-label={say('crew.orders.take.of', { order: text })}
                    onClick={() =>
                      document.apply(say('crew.orders.step', { order: text }), (now) => reseat(now, order))
                    }
                  >
                    {say('crew.orders.take')}
                  </button>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
