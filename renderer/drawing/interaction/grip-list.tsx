import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { Format } from '../../../app/language/format.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { coordinateOf, withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { drilledPlaces } from '../../../core/drilling/drilled-places.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FitDocument } from '../../document/fit-document.ts';
import { say, words } from '../../language/messages.ts';
import type { BenchCanvas } from '../canvas/bench-canvas.ts';
import { coordinateWords } from '../view/coordinate-words.ts';
import { gripMarks } from '../view/grip-marks.ts';
import { GRIPS, type Grip, gripName, HANDLES, isTabStop } from '../view/handle.ts';
import { seatPlace } from '../view/handle-places.ts';
import { dragLimits } from '../view/limits.ts';
import type { Scene } from '../view/scene.ts';
import type { InteractionStore } from './interaction-state.ts';
import { arrowKey, drilledAlong, nudged, nudgeOf } from './nudge.ts';

/**
 * The drawing's handles as elements of the page, each standing over its mark on the canvas: they take the keyboard's
 * focus and arrow keys, and say where they are. The pointer goes through them to the drawing.
 */
export function GripList({
  document,
  canvas,
  interaction,
}: {
  document: FitDocument;
  canvas: BenchCanvas;
  interaction: InteractionStore;
}) {
  const list = useRef<HTMLUListElement>(null);
  const format = useFormat();
  const fit = useStore(document, (state) => state.fit);
  const seat = useStore(document, (state) => state.seat);

  useEffect(() => {
    const stop = canvas.onDrawn((scene) => list.current && moveAlong(list.current, scene));
    canvas.invalidate();
    return stop;
  }, [canvas]);

  function take(grip: Grip, button: HTMLElement): void {
    canvas.point(grip, { focused: button.matches(':focus-visible') });
    interaction.setState({ chosen: grip.handle });
    document.light(HANDLES[grip.handle].fitting);
  }

  function leave(): void {
    canvas.point(null, { focused: false });
    document.light(null);
  }

  return (
    <ul className="grips" ref={list}>
      {GRIPS.map((grip) => (
        <li key={gripName(grip)}>
          <button
            type="button"
            className="grip"
            data-grip={gripName(grip)}
            data-handle={grip.handle}
            data-view={grip.view}
            tabIndex={isTabStop(grip) ? 0 : -1}
            aria-label={nameOf(grip, fit, { seat, format })}
            onFocus={(event) => take(grip, event.currentTarget)}
            onBlur={leave}
            onKeyDown={(event) => nudge(event, grip, { document, canvas })}
          />
        </li>
      ))}
    </ul>
  );
}

/** Puts each element over its mark; those out of sight keep their last place. Left alone while the hand is moving. */
function moveAlong(list: HTMLUListElement, scene: Scene): void {
  if (scene.held) return;
  const marks = new Map(gripMarks(scene).map((mark) => [gripName(mark.grip), mark.at]));
  for (const button of list.querySelectorAll<HTMLElement>('[data-grip]')) {
    const at = marks.get(button.dataset.grip!);
    button.toggleAttribute('data-out-of-sight', !at);
    if (!at) continue;
    button.style.transform = `translate(${at.x}px, ${at.y}px)`;
    button.dataset.x = at.x.toFixed(2);
    button.dataset.y = at.y.toFixed(2);
  }
}

function nameOf(grip: Grip, fit: Fit, { seat, format }: { seat: number; format: Format }): string {
  const { views, fitting } = HANDLES[grip.handle];
  const here = fit.seats[seat]!;
  const values = words().row(
    (views[grip.view] ?? []).map((c) => coordinateWords(c, coordinateOf(here, c), format)),
  );
  return say(here.locks.includes(fitting) ? 'drawing.handle.locked' : 'drawing.handle.named', {
    handle: say(`drawing.handle.${grip.handle}`),
    view: say(`drawing.view.${grip.view}`),
    values,
  });
}

/** An arrow key moves what the handle moves, or says why not. */
function nudge(
  event: React.KeyboardEvent<HTMLElement>,
  grip: Grip,
  { document, canvas }: { document: FitDocument; canvas: BenchCanvas },
): void {
  canvas.point(grip, { focused: true });
  const key = arrowKey(event.key);
  if (!key || event.metaKey) return;
  const { fit, report } = document.live();
  const { seat } = document.getState();
  const place = seatPlace(fit, report, seat);
  const push = nudgeOf(grip, key, place);
  if (!push) return;
  event.preventDefault();
  const handle = say(`drawing.handle.${grip.handle}`);
  if (place.seat.locks.includes(HANDLES[grip.handle].fitting)) {
    announce(say('drawing.locked', { handle }));
    return;
  }
  const limits = dragLimits(push.coordinate, { fit, report, seat });
  const press = { shift: event.shiftKey, ctrl: event.ctrlKey, alt: event.altKey };
  const { handle: fitting } = grip;
  const drilled =
    fitting === 'kneePad' || fitting === 'rearRest'
      ? drilledAlong(place, push, drilledPlaces(fit, seat, fitting))
      : [];
  const value = nudged(place, push, { limits, press, drilled });
  document.nudge(say('drawing.handle.move', { handle }), (now) =>
    withCoordinate(now, { seat, coordinate: push.coordinate }, value),
  );
}
