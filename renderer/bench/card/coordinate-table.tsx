import type { Format } from '../../../app/language/format.ts';
import { coordinatesOfFitting, type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Lockable } from '../../../core/document/seat-schema.ts';
import { quantityDefinition } from '../../../core/evaluation/quantities.ts';
import { useFormat } from '../../display/use-display.ts';
import { explainedTitle } from '../../language/explained.tsx';
import { say, words } from '../../language/messages.ts';
import { quantityName } from '../../language/sentences.ts';
import { useFit, useSlow } from '../bench-context.tsx';
import { coordinateName } from '../coordinate-name.ts';
import { CoordinateField } from './coordinate-field.tsx';
import { directionWord, effectText, isNothing, stepsFor } from './effect-text.ts';
import {
  effectsOf,
  HEADLINE_EFFECTS,
  hasOwnEffects,
  type OwnEffect,
  type StepEffect,
  stepEffects,
} from './step-effects.ts';

/** Units whose changes need a wider column: "−12.5 mm", "−0.5 N·m". */
const LONG_UNITS: ReadonlySet<string | undefined> = new Set(['m', 'N·m']);

/** The table of the part: an entry for each coordinate, and what one centimetre (five degrees) more of it does. */
export function CoordinateTable({ fitting }: { fitting: Lockable }) {
  const format = useFormat();
  const occupied = useFit(({ fit, seat }) => fit.seats[seat]?.athlete !== null);
  const coordinates = coordinatesOfFitting(fitting);
  const turns = coordinates.some(isAngle);
  const step = format.spokenLength(stepsFor(format).placeM);
  return (
    <table className="card-table">
      <caption className="only-spoken">{say('centimetre.about', { step })}</caption>
      <colgroup>
        <col className="card-name" />
        <col className="card-entry" />
        {HEADLINE_EFFECTS[fitting].map((id) => (
          <col key={id} className={LONG_UNITS.has(quantityDefinition(id)?.unit) ? 'card-long' : undefined} />
        ))}
      </colgroup>
      <thead>
        <tr>
          <th scope="col" colSpan={2}>
            {occupied && say('card.step', { step })}
            {occupied && turns && <span className="card-turns"> {say('card.step.degrees')}</span>}
          </th>
          {occupied &&
            HEADLINE_EFFECTS[fitting].map((id) => (
              <th key={id} scope="col" className="numeric" title={quantityName(id)}>
                {say(`drawing.told.${id}`)}
              </th>
            ))}
        </tr>
      </thead>
      <tbody>
        {coordinates.map((coordinate) => (
          <CoordinateRow key={coordinate} coordinate={coordinate} fitting={fitting} occupied={occupied} />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps {
  readonly coordinate: FittingCoordinate;
  readonly fitting: Lockable;
  readonly occupied: boolean;
}

function CoordinateRow({ coordinate, fitting, occupied }: RowProps) {
  return (
    <tr data-coordinate={coordinate}>
      <th scope="row" title={explainedTitle(coordinateName(coordinate), words())}>
        {directionWord(coordinate)}
      </th>
      <td className="card-field">
        <CoordinateField coordinate={coordinate} />
      </td>
      {occupied && <EffectCells coordinate={coordinate} fitting={fitting} />}
    </tr>
  );
}

function EffectCells({ coordinate, fitting }: Omit<RowProps, 'occupied'>) {
  const format = useFormat();
  const seat = useFit((state) => state.seat);
  const derivatives = useSlow((answers) =>
    answers.seat === seat ? answers.derivatives[coordinate] : undefined,
  );
  const ids = effectsOf(coordinate, fitting);
  const known = derivatives ?? [];
  const changes = stepEffects(coordinate, ids, { derivatives: known, seat, steps: stepsFor(format) });
  if (hasOwnEffects(coordinate)) {
    const title = changes.map((change) =>
      say('effect.written', { name: quantityName(change.id), change: effectText(change, format) }),
    );
    return (
      <td colSpan={HEADLINE_EFFECTS[fitting].length} className="numeric card-own" title={words().row(title)}>
        {derivatives && words().beside(changes.map((change) => ownText(change, format)))}
      </td>
    );
  }
  return changes.map((change) => {
    const text = effectText(change, format);
    return (
      <td key={change.id} className="numeric" data-nothing={isNothing(text) || undefined}>
        {text}
      </td>
    );
  });
}

/** What a turn does, in short: "side −6.4 mm". */
function ownText(change: StepEffect, format: Format): string {
  return say('effect.written', {
    name: say(`card.own.${change.id as OwnEffect}`),
    change: effectText(change, format),
  });
}
