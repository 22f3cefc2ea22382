import { createStore } from 'zustand/vanilla';
import type { Side } from '../../../core/frame/mirror.ts';
import type { Route } from '../../route/route.ts';
import { renewFormValues } from '../../ui/form/use-form-values.ts';
import { FIRST_FIT, FIRST_FIT_START, type FirstFitValues } from './first-fit-rules.ts';

/** Who is to sit in one seat; null athlete for nobody, undefined while nothing has been chosen. */
export interface ChosenSeat {
  readonly athleteId: string | null | undefined;
  /** Null: the athlete's own side. */
  readonly side: Side | null;
}

/** What is chosen for a new fit. */
export interface NewFitValues {
  readonly boatId: string | null;
  readonly seats: readonly ChosenSeat[];
  /** Null: a name of athletes and boat. */
  readonly name: string | null;
}

/** What is being made elsewhere, to be brought back here; `begun` is what a first fit's page knows of it already. */
type Awaited =
  | { readonly what: 'boat'; readonly begun?: FirstFitValues }
  | { readonly what: 'athlete'; readonly seat: number; readonly begun?: FirstFitValues };

/** What has been chosen for a new fit so far. It outlives a walk to the athlete's or boat's form and back. */
interface Chosen extends NewFitValues {
  readonly awaited: Awaited | null;
}

const NOTHING: Chosen = { boatId: null, seats: [], name: null, awaited: null };
export const newFitStore = createStore<Chosen>(() => NOTHING);

export function forgetChosen(): void {
  newFitStore.setState(NOTHING);
}

/** The seats with a part of one changed; seats before it that nobody has chosen stay open. */
export function withSeat(
  seats: readonly ChosenSeat[],
  index: number,
  part: Partial<ChosenSeat>,
): readonly ChosenSeat[] {
  const all = [...seats];
  while (all.length <= index) all.push({ athleteId: undefined, side: null });
  all[index] = { ...all[index]!, ...part };
  return all;
}

export function chooseSeat(index: number, part: Partial<ChosenSeat>): void {
  newFitStore.setState(({ seats }) => ({ seats: withSeat(seats, index, part) }));
}

/** What the page of a first fit knows already of the athlete or boat that is being made for it; null where nothing is. */
export function begunFor(what: Awaited['what']): FirstFitValues | null {
  const { awaited } = newFitStore.getState();
  return awaited?.what === what ? (awaited.begun ?? null) : null;
}

/** After an athlete or boat was made for a new fit: takes it up there and says where to go back to; else null. */
export function returnAfterMaking(what: 'athlete' | 'boat', id: string): Route | null {
  const { awaited } = newFitStore.getState();
  newFitStore.setState({ awaited: null });
  if (awaited?.what !== what) return null;
  // They are a record's own now: no form keeps a name that may be erased.
  renewFormValues(FIRST_FIT, FIRST_FIT_START);
  if (awaited.what === 'boat') newFitStore.setState({ boatId: id });
  else chooseSeat(awaited.seat, { athleteId: id });
  return { page: 'new-fit' };
}
