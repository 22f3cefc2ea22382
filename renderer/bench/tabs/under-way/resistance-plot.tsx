import type { UnderWay } from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { PlotFigure } from '../stroke/plot-figure.tsx';

const PARTS = ['total', 'friction', 'wave', 'air'] as const;

/** Resistance over speed with its parts; ruled where the boat runs. */
export function ResistancePlot({ found }: { found: UnderWay }) {
  const format = useFormat();
  const { curve, speed } = found;
  const [from, to] = [curve[0]!.speed, curve.at(-1)!.speed];
  const speedText = (value: number) => format.number(value, { decimals: 1 });
  return (
    <PlotFigure
      plot={{
        id: 'resistance',
        title: say('under-way.plot', { from: speedText(from), to: speedText(to) }),
        unit: 'N',
        decimals: 0,
        lines: PARTS.map((part) => ({
          id: part,
          name: say(`under-way.part.${part}`),
          values: curve.map((each) => each[part]),
        })),
      }}
      ruled={[(speed - from) / (to - from)]}
      cursor={false}
    />
  );
}
