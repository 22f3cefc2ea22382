import { useStore } from 'zustand';
import type { Fit } from '../../core/fit/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../core/fit/fitting-coordinate.ts';
import { announce } from '../announce/announce.ts';
import { useFormat } from '../display/use-display.ts';
import type { FitDocument } from '../document/fit-document.ts';
import type { BenchCanvas } from '../drawing/bench-canvas.ts';
import type { Format } from '../language/format.ts';
import { say } from '../language/messages.ts';
import { coordinateWords } from './coordinate-words.ts';
import type { HandStore } from './hand-state.ts';
import { GRIPS, type Grip, gripName, HANDLES, isTabStop } from './handle.ts';
import { seatPlace } from './handle-places.ts';
import { arrowKey, nudged, pushOf } from './nudge.ts';
import { railOf } from './rails.ts';

interface Given {
  readonly document: FitDocument;
  readonly canvas: BenchCanvas | null;
  readonly hand: HandStore;
  readonly aboutId: string;
}

/**
 * The handles as elements of the page: one button for each, over its place on the canvas, in the order that Tab walks.
 * Pointers go through them to the paper; the keyboard and screen readers use them. Their places are written by
 * `placeGripButtons` after each drawing.
 */
export function GripButtons({ document, canvas, hand, aboutId }: Given) {
  const format = useFormat();
  const fit = useStore(document, (state) => state.fit);
  const seat = useStore(document, (state) => state.seat);
  return (
    <div className="grip-buttons">
      {GRIPS.map((grip) => (
        <button
          key={gripName(grip)}
          type="button"
          data-handle={grip.handle}
          data-view={grip.view}
          tabIndex={isTabStop(grip) ? 0 : -1}
          aria-label={gripLabel(grip, { fit, seat, format })}
          aria-describedby={aboutId}
          onFocus={(event) =>
            focusOn(grip, { document, canvas, hand, seen: event.currentTarget.matches(':focus-visible') })
          }
          onBlur={() => {
            canvas?.point(null, { focused: false });
            document.light(null);
          }}
          onKeyDown={(event) => nudgeBy(grip, document, event)}
        />
      ))}
    </div>
  );
}

function gripLabel(grip: Grip, { fit, seat, format }: { fit: Fit; seat: number; format: Format }): string {
  const at = fit.seats[seat]!;
  const { fitting, views } = HANDLES[grip.handle];
  const values = (views[grip.view] ?? [])
    .map((c) => coordinateWords(c, coordinateOf(at, c), format))
    .join(', ');
  return say(at.locks.includes(fitting) ? 'drawing.handle.locked' : 'drawing.handle.named', {
    handle: say(`drawing.handle.${grip.handle}`),
    view: say(`drawing.view.${grip.view}`),
    values,
  });
}

function focusOn(
  grip: Grip,
  { document, canvas, hand, seen }: Omit<Given, 'aboutId'> & { seen: boolean },
): void {
  hand.setState({ chosen: grip.handle });
  document.light(HANDLES[grip.handle].fitting);
  canvas?.point(grip, { focused: seen });
}

function nudgeBy(grip: Grip, document: FitDocument, event: React.KeyboardEvent): void {
  const key = arrowKey(event.key);
  if (!key || event.metaKey) return;
  const { fit, report } = document.live();
  const { seat } = document.getState();
  const place = seatPlace(fit, report, seat);
  const push = pushOf(grip, key, place);
  if (!push) return;
  event.preventDefault();
  const handle = say(`drawing.handle.${grip.handle}`);
  if (place.seat.locks.includes(HANDLES[grip.handle].fitting)) {
    announce(say('drawing.locked', { handle }));
    return;
  }
  const press = { shift: event.shiftKey, ctrl: event.ctrlKey, alt: event.altKey };
  const rail = railOf(push.coordinate, { fit, report, seat });
  const value = nudged(place, push, { rail, press });
  document.nudge(say('drawing.handle.move', { handle }), (now) =>
    withCoordinate(now, { seat, coordinate: push.coordinate }, value),
  );
}

/** Moves the buttons over their handles; those that are out of sight keep their last place and are told by `data-out`. */
export function placeGripButtons(
  list: HTMLElement,
  marks: readonly { grip: Grip; at: { x: number; y: number } }[],
): void {
  const byName = new Map(marks.map(({ grip, at }) => [gripName(grip), at]));
  for (const button of list.querySelectorAll<HTMLElement>('[data-handle]')) {
    const at = byName.get(`${button.dataset.handle}/${button.dataset.view}`);
    button.toggleAttribute('data-out', !at);
    if (!at) continue;
    button.dataset.x = at.x.toFixed(2);
    button.dataset.y = at.y.toFixed(2);
    button.style.transform = `translate(${at.x.toFixed(1)}px, ${at.y.toFixed(1)}px)`;
  }
}
