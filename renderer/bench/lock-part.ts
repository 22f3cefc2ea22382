import type { Lockable } from '../../core/document/seat-schema.ts';
import type { FitDocument } from '../document/fit-document.ts';
import { say } from '../language/messages.ts';

/** Locks a fitting of the seat worked on against hand and proposals, or frees it; one step of undo. */
export function toggleLock(document: FitDocument, fitting: Lockable): void {
  const { fit, seat } = document.getState();
  const locked = fit.seats[seat]!.locks.includes(fitting);
  const what = say(`fitting.${fitting}`);
  document.apply(say(locked ? 'step.unlock' : 'step.lock', { what }), (now) => ({
    ...now,
    seats: now.seats.map((at, index) =>
      index === seat
        ? { ...at, locks: locked ? at.locks.filter((lock) => lock !== fitting) : [...at.locks, fitting] }
        : at,
    ),
  }));
}
