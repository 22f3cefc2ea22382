import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { FittingCoordinate } from '../../core/findings/finding.ts';
import { createEvaluator } from '../../core/fit/evaluator.ts';
import { coordinateOf } from '../../core/fit/fitting-coordinate.ts';
import { type Derivative, derivativesTo } from '../../core/proposal/sensitivity.ts';
import { toDegrees } from '../../core/units/angle.ts';
import { useFormat } from '../display/use-display.ts';
import type { FitDocument } from '../document/fit-document.ts';
import type { BenchCanvas } from '../drawing/bench-canvas.ts';
import type { Format } from '../language/format.ts';
import { say } from '../language/messages.ts';
import { coordinateWords } from './coordinate-words.ts';
import type { HandStore } from './hand-state.ts';
import { HANDLES, type HandleId } from './handle.ts';

/** How far the note says a coordinate goes: a centimetre, half an inch, or five degrees. */
const STEP = { cm: 0.01, in: 0.0127, deg: 5 } as const;

/** Every coordinate of a handle, each once. */
function coordinatesOf(handle: HandleId): FittingCoordinate[] {
  return [...new Set(Object.values(HANDLES[handle].views).flat())];
}

/** The hand's note in the sheet's empty quarter: where the handle stands, and what a little more of it does. */
export function HandNote({
  document,
  canvas,
  hand,
}: {
  document: FitDocument;
  canvas: BenchCanvas;
  hand: HandStore;
}) {
  const format = useFormat();
  const chosen = useStore(hand, (state) => state.chosen);
  const fit = useStore(document, (state) => state.fit);
  const seat = useStore(document, (state) => state.seat);
  const effects = useEffects(document, chosen, seat);
  const quarter = canvas.scene()?.layout.quarter;
  const lines = useRef<HTMLUListElement>(null);
  const coordinates = coordinatesOf(chosen);

  useEffect(
    () =>
      document.onLive((now) => {
        const here = now.seats[seat];
        for (const cell of lines.current?.querySelectorAll<HTMLElement>('[data-coordinate]') ?? []) {
          const coordinate = cell.dataset.coordinate as FittingCoordinate;
          if (here) cell.textContent = coordinateWords(coordinate, coordinateOf(here, coordinate), format);
        }
      }),
    [document, seat, format],
  );

  if (!quarter || !fit.seats[seat]) return null;
  const isTurn = coordinates[0]!.endsWith('Deg');
  const heading = isTurn
    ? 'drawing.note.degrees'
    : format.lengthUnit === 'in'
      ? 'drawing.note.inch'
      : 'drawing.note.centimetre';
  return (
    <section
      className="hand-note"
      data-over-paper
      style={{ left: quarter.left, top: quarter.top, width: quarter.width }}
      aria-label={say('drawing.note.of', { handle: say(`drawing.handle.${chosen}`) })}
    >
      <h2>{say(`drawing.handle.${chosen}`)}</h2>
      <ul ref={lines} className="hand-note-places">
        {coordinates.map((coordinate) => (
          <li key={coordinate} data-coordinate={coordinate}>
            {coordinateWords(coordinate, coordinateOf(fit.seats[seat]!, coordinate), format)}
          </li>
        ))}
      </ul>
      {effects && (
        <table>
          <caption>{say(heading)}</caption>
          <thead>
            <tr>
              <th scope="col" className="only-spoken">
                {say('drawing.note.way')}
              </th>
              {COLUMNS.map(({ name }) => (
                <th key={name} scope="col" title={say(`drawing.note.${name}.long`)}>
                  {say(`drawing.note.${name}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {coordinates.map((coordinate) => (
              <tr key={coordinate}>
                <th scope="row">{say(`drawing.note.${wayOf(coordinate)}`)}</th>
                {COLUMNS.map((column) => (
                  <td key={column.name}>
                    {column.write(effects.get(coordinate) ?? [], stepOf(coordinate, format), format)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

type Way = 'turn' | 'aft' | 'forward' | 'out' | 'up' | 'down';

function wayOf(coordinate: FittingCoordinate): Way {
  if (coordinate.endsWith('Deg')) return 'turn';
  const field = coordinate.split('.')[1];
  if (field === 'aftM') return 'aft';
  if (field === 'forwardM') return 'forward';
  if (field === 'outM') return 'out';
  return field === 'heightM' ? 'up' : 'down';
}

function stepOf(coordinate: FittingCoordinate, { lengthUnit }: Format): number {
  if (coordinate.endsWith('Deg')) return STEP.deg;
  return lengthUnit === 'in' ? STEP.in : STEP.cm;
}

interface Column {
  readonly name: 'bow' | 'knee' | 'load' | 'lean';
  write(derivatives: readonly Derivative[], step: number, format: Format): string;
}

const change = (derivatives: readonly Derivative[], id: string) =>
  derivatives.find((d) => d.id === id)?.perUnit ?? null;

const degrees: (id: string) => Column['write'] = (id) => (derivatives, step, format) => {
  const per = change(derivatives, id);
  return per === null ? '–' : format.degrees(toDegrees(per * step), { decimals: 1, signed: true });
};

const COLUMNS: readonly Column[] = [
  {
    name: 'bow',
    write: (derivatives, step, format) => {
      const per = change(derivatives, 'trimRest');
      return per === null ? '–' : format.length(per * step, { unit: 'mm', signed: true });
    },
  },
  { name: 'knee', write: degrees('frontKnee') },
  {
    name: 'load',
    write: (derivatives, step, format) => {
      const per = change(derivatives, 'kneeShare');
      return per === null ? '–' : format.quantity('kneeShare', { signed: true })(per * step, '1');
    },
  },
  { name: 'lean', write: degrees('trunkRoll') },
];

/** Derivatives of a handle's coordinates, by central differences of the whole pipeline, made when the hand is at rest. */
function useEffects(
  document: FitDocument,
  handle: HandleId,
  seat: number,
): ReadonlyMap<FittingCoordinate, readonly Derivative[]> | null {
  const [evaluator] = useState(createEvaluator);
  const fit = useStore(document, (state) => state.fit);
  const report = useStore(document, (state) => state.report);
  const [effects, setEffects] = useState<ReadonlyMap<FittingCoordinate, readonly Derivative[]> | null>(null);
  useEffect(() => {
    if (!fit.seats[seat]?.athlete) return setEffects(null);
    const timer = setTimeout(() => {
      const found = coordinatesOf(handle).map(
        (coordinate) =>
          [coordinate, derivativesTo({ evaluator, fit, report }, { seat, coordinate })] as const,
      );
      setEffects(new Map(found));
    }, 30);
    return () => clearTimeout(timer);
  }, [evaluator, fit, report, handle, seat]);
  return effects;
}
