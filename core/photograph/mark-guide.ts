import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Fit } from '../document/fit-schema.ts';
import { seatFrame, solveSeat } from '../evaluation/seat-state.ts';
import { inView, type ViewPoint } from '../graphics/view.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import type { FigurePoint } from '../posture/stance.ts';
import { SHOWN_IN, type ShowPicture, type ShowView, showPicture } from '../show/show-picture.ts';
import { type ShowWindow, showWindow } from '../show/show-window.ts';
import { keysOf, recordOf } from '../units/entries.ts';
import { type BoatMark, boatMarks } from './boat-marks.ts';

/** The planned paddler in the boat, with the place of every mark. Metres to the right and up in the view. */
export interface MarkGuide {
  /** The picture of boat and paddler. */
  readonly picture: ShowPicture;
  /** The part of it that is shown. */
  readonly window: ShowWindow;
  /** Where each mark of the boat is. */
  readonly boat: Readonly<Record<BoatMark, ViewPoint>>;
  /** Where each joint is. */
  readonly joints: Readonly<Record<FigurePoint, ViewPoint>>;
}

/** A small picture that shows which point is to be marked next: the plan, at the ready. Null where nobody kneels. */
export function markGuide(fit: Fit, index: number, view: ShowView): MarkGuide | null {
  const seat = fit.seats[index];
  const places = boatMarks(fit, index);
  if (!seat?.athlete || !places) return null;
  const body = bodyOfAthlete(seat.athlete);
  const frame = seatFrame(fit.boat, seat, index);
  const { points } = solveSeat({ seat, body, frame }).stances.ready;
  const scene = {
    points,
    body: { stature: body.stature, sex: seat.athlete.sex, lengths: { kneeRadius: body.lengths.kneeRadius } },
    footLength: body.lengths.footLength.value,
    frame,
    seat,
    board: fit.boat.floorboard,
    water: null,
  };
  const flat = <Name extends string>(of: Readonly<Record<Name, { x: number; y: number; z: number }>>) =>
    recordOf(keysOf(of), (name) => inView(SHOWN_IN[view], of[name]));
  return {
    picture: showPicture(scene, hullOfBoat(fit.boat), view),
    window: showWindow([scene], view),
    boat: flat(places),
    joints: flat(points),
  };
}
