import type { Format } from '../../app/language/format.ts';
import { COORDINATES, type FittingCoordinate, isAngle } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { withCoordinate } from '../../core/document/fitting-coordinate.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import type { SideEffect, Suggestion, Unit } from '../../core/evaluation/finding.ts';
import { MOVES } from '../../core/text/coordinate-move.ts';
import { say, words } from '../language/messages.ts';
import { quantityName, signedText } from '../language/sentences.ts';

/** A change that can be made. */
export type ProposedChange = Exclude<Suggestion, { kind: 'none' | 'measure' }>;

/** A coordinate's value (metres or degrees) as a person says it: a place across the boat with its side. */
export function coordinateText(coordinate: FittingCoordinate, value: number, format: Format): string {
  if (COORDINATES[coordinate].axis !== 'across') return amountText(coordinate, value, format);
  const by = amountText(coordinate, Math.abs(value), format);
  return say(value < 0 ? 'place.off-side' : 'place.kneeling-side', { by });
}

/** An amount in a coordinate's unit, without a side. */
export function amountText(coordinate: FittingCoordinate, amount: number, format: Format): string {
  return isAngle(coordinate)
    ? format.degrees(amount, { decimals: Number.isInteger(amount) ? 0 : 1 })
    : format.length(amount, { exact: true });
}

/** A change of a coordinate with its sign: "+1.5 cm". */
export function signedAmountText(coordinate: FittingCoordinate, by: number, format: Format): string {
  return isAngle(coordinate)
    ? format.degrees(by, { decimals: Number.isInteger(by) ? 0 : 1, signed: true })
    : format.length(by, { exact: true, signed: true });
}

/** A proposed change in words: "Knee pad 1.5 cm forward, to 16.0 cm". */
export function changeText(suggestion: ProposedChange, format: Format): string {
  if (suggestion.kind === 'choose') return say(`choose.${suggestion.choice}`);
  const { coordinate, from, to } = suggestion;
  const [part, more, less] = MOVES[coordinate];
  return say(`move.${to > from ? more : less}`, {
    part: say(`move.part.${part}`),
    by: amountText(coordinate, Math.abs(to - from), format),
    to: coordinateText(coordinate, to, format),
  });
}

/** A quantity's value without a sign to think about: "3 mm lower", "none, 25 mm to spare". */
export function plainValue(quantity: { id: string; value: number; unit: Unit }, format: Format): string {
  return signedText(quantity, format.quantity(quantity.id));
}

/** What a change does besides, in words: "Front knee 119° → 117°"; where both ends read the same, only what is said of it turns. */
export function sideEffectText(
  { id, unit, from, to, severityFrom, severityTo }: SideEffect,
  format: Format,
): string {
  const write = (value: number) => plainValue({ id, value, unit }, format);
  const values = { name: quantityName(id), from: write(from), to: write(to) };
  if (severityFrom === severityTo) return say('notes.side-effect', values);
  const severity = say(`severity.${severityTo}`);
  if (values.from !== values.to) return say('notes.side-effect.severity', { ...values, severity });
  const text = say('finding-title.plain', { name: values.name, value: values.to });
  return say('sheet.bracketed', { text, more: severity });
}

/** The most telling of what a change does besides: what turns first. Empty where it does nothing. */
export function sideEffectsText(effects: readonly SideEffect[], most: number, format: Format): string {
  return words().row(
    [...effects]
      .sort((a, b) => Number(b.severityFrom !== b.severityTo) - Number(a.severityFrom !== a.severityTo))
      .slice(0, most)
      .map((effect) => sideEffectText(effect, format)),
  );
}

/** The fit with a proposed change made. */
export function withChange(fit: Fit, change: ProposedChange): Fit {
  if (change.kind === 'move') return withCoordinate(fit, change, change.to);
  const seats = fit.seats.map((seat, index) =>
    index === change.seat ? withChoice(seat, change.choice) : seat,
  );
  return { ...fit, seats };
}

function withChoice(seat: Seat, choice: Extract<ProposedChange, { kind: 'choose' }>['choice']): Seat {
  switch (choice) {
    case 'strapReleases':
      return { ...seat, rearRest: { ...seat.rearRest, strap: 'releases' } };
    case 'floorNonSlip':
      return { ...seat, frontFoot: { ...seat.frontFoot, nonSlip: true } };
    case 'padBraced':
      return { ...seat, kneePad: { ...seat.kneePad, braced: true } };
    case 'kneelsOnSide':
      return { ...seat, kneels: seat.side };
  }
}
