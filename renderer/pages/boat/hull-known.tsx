import { useMemo } from 'react';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { type HullSpread, hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { unmeasuredBoat } from '../../../core/evaluation/unmeasured-boat.ts';
import { useFormat } from '../../display/use-display.ts';
import { Explained } from '../../language/explained.tsx';
import { say } from '../../language/messages.ts';
import { DataTable } from '../../ui/table/data-table.tsx';

/** The figures that are told of a hull, and how many times its spread the figure's is: a breadth has two halves. */
const FIGURES = [
  ['draft', 1],
  ['trimRest', 1],
  ['halfBreadth', 2],
] as const satisfies readonly (readonly [keyof HullSpread, number])[];

/** Both spreads of a boat, or null if the entries make no hull. */
function spreadsOf(boat: Boat): { before: HullSpread; now: HullSpread } | null {
  try {
    return { before: hullSpread(unmeasuredBoat(boat)), now: hullSpread(boat) };
  } catch {
    // Another part of the page says why there is no hull.
    return null;
  }
}

/** How well a boat's hull is known: an estimate by its class, or what tape, offsets and float check have narrowed. */
export function HullKnown({ boat }: { boat: Boat }) {
  const format = useFormat();
  const spreads = useMemo(() => spreadsOf(boat), [boat]);
  if (!spreads) return null;
  const estimate = boat.hull.kind === 'usual' && !boat.correction;
  const spread = (value: number) => say('boat.known.spread', { by: format.length(value, { fine: true }) });
  const source = boat.correction ? 'checked' : boat.hull.kind;
  return (
    <section className="hull-known">
      <h2>{say('boat.known')}</h2>
      <p>{say(`boat.known.${source}`)}</p>
      <DataTable
        rows={FIGURES}
        rowKey={([figure]) => figure}
        columns={[
          {
            title: say('boat.known.figure'),
            isName: true,
            cell: ([figure]) => <Explained text={say(`boat.known.${figure}`)} />,
          },
          {
            title: say('boat.known.before'),
            numeric: true,
            cell: ([figure, times]) => spread(times * spreads.before[figure]),
          },
          ...(estimate
            ? []
            : [
                {
                  title: say('athlete-page.now'),
                  numeric: true,
                  cell: ([figure, times]: (typeof FIGURES)[number]) => spread(times * spreads.now[figure]),
                },
              ]),
        ]}
      />
      <p className="soft">{say(estimate ? 'boat.known.narrow' : 'boat.known.about')}</p>
    </section>
  );
}
