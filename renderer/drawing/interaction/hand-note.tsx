import { useEffect, useRef } from 'react';
import { type StoreApi, useStore } from 'zustand';
import { COORDINATES, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import { quantityName } from '../../../core/text/sentences.ts';
import { LENGTH_UNITS } from '../../../core/units/length-text.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FitDocument } from '../../document/fit-document.ts';
import { onLiveFrame } from '../../document/live-frame.ts';
import type { SlowAnswers } from '../../document/slow-answers.ts';
import { writeText } from '../../document/write-text.ts';
import type { Format } from '../../language/format.ts';
import { say } from '../../language/messages.ts';
import { coordinateWords } from '../view/coordinate-words.ts';
import type { HandStore } from './hand-state.ts';
import { type Change, coordinatesOf, type StepEffect, stepEffects } from './one-centimetre.ts';

const TURN_DEG = 5;

/** The hand's note in the sheet's empty quarter: where the handle stands, and what a little more of it does. */
export function HandNote({
  document,
  answers,
  hand,
}: {
  document: FitDocument;
  answers: StoreApi<SlowAnswers>;
  hand: HandStore;
}) {
  const format = useFormat();
  const handle = useStore(hand, ({ chosen }) => chosen);
  const held = useStore(hand, (state) => state.held !== null);
  const fit = useStore(document, (state) => state.fit);
  const seat = useStore(document, (state) => state.seat);
  const placeM = format.lengthUnit === 'in' ? LENGTH_UNITS.in / 2 : 0.01;
  const derivatives = useStore(answers, (known) => (known.seat === seat ? known.derivatives : null));
  const known = derivatives && coordinatesOf(handle).every((coordinate) => derivatives[coordinate]);
  const effects = known ? stepEffects(handle, { derivatives, seat }, { placeM, turnDeg: TURN_DEG }) : [];
  const places = useRef<HTMLUListElement>(null);
  const coordinates = coordinatesOf(handle);

  useEffect(
    () =>
      onLiveFrame(document, (now) => {
        const here = now.seats[seat];
        for (const line of places.current?.querySelectorAll<HTMLElement>('[data-coordinate]') ?? []) {
          const coordinate = line.dataset.coordinate as FittingCoordinate;
          if (here) writeText(line, coordinateWords(coordinate, coordinateOf(here, coordinate), format));
        }
      }),
    [document, seat, format],
  );

  if (!fit.seats[seat]) return null;
  const name = say(`drawing.handle.${handle}`);
  return (
    <section
      className="hand-note"
      data-over-paper
      data-held={held || undefined}
      aria-label={say('drawing.note.of', { handle: name })}
    >
      <h2>{name}</h2>
      <ul ref={places} className="hand-note-places">
        {coordinates.map((coordinate) => (
          <li key={coordinate} data-coordinate={coordinate}>
            {coordinateWords(coordinate, coordinateOf(fit.seats[seat]!, coordinate), format)}
          </li>
        ))}
      </ul>
      {effects.length > 0 && <Effects effects={effects} format={format} />}
    </section>
  );
}

function Effects({ effects, format }: { effects: readonly StepEffect[]; format: Format }) {
  const turns = effects.every(({ coordinate }) => isAngle(coordinate));
  const step = turns ? 'degrees' : format.lengthUnit === 'in' ? 'inch' : 'centimetre';
  return (
    <table>
      <caption>{say(`drawing.note.${step}`)}</caption>
      <thead>
        <tr>
          <td />
          {effects[0]!.changes.map(({ id }) => (
            <th key={id} scope="col" title={quantityName(id)}>
              {say(`drawing.told.${id}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {effects.map(({ coordinate, changes }) => (
          <tr key={coordinate}>
            <th scope="row">{say(`drawing.note.${directionOf(coordinate)}`)}</th>
            {changes.map((change) => (
              <td key={change.id}>{changeWords(change, format)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type Direction = 'turn' | 'aft' | 'forward' | 'out' | 'up' | 'down';

function directionOf(coordinate: FittingCoordinate): Direction {
  if (isAngle(coordinate)) return 'turn';
  const { axis, sign } = COORDINATES[coordinate];
  if (axis === 'forward') return sign < 0 ? 'aft' : 'forward';
  if (axis === 'across') return 'out';
  return axis === 'height' ? 'up' : 'down';
}

/** Changes with one place more than the values themselves: tenths of a millimetre, of a degree, of a percent. */
function changeWords({ id, unit, by }: Change, format: Format): string {
  if (by === null) return '–';
  const tenths = { decimals: 1, signed: true } as const;
  if (unit === 'rad') return format.degrees((by * 180) / Math.PI, tenths);
  if (unit === '1') return `${format.number(by * 100, tenths)}\u{202f}%`;
  if (unit === 'm' && format.lengthUnit !== 'in') return `${format.number(by * 1000, tenths)}\u{202f}mm`;
  return format.quantity(id, { signed: true })(by, unit);
}
