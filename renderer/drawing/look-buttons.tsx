import { useState } from 'react';
import { useStore } from 'zustand';
import type { FitDocument } from '../document/fit-document.ts';
import { say } from '../language/messages.ts';
import type { BenchCanvas } from './bench-canvas.ts';
import { middleOf } from './screen-point.ts';
import { zoomAbout } from './view-geometry.ts';

const STEP = 1.25;

/** Zooms all views about the middle of the profile. */
export function zoomBy(canvas: BenchCanvas, factor: number): void {
  const { geometry } = canvas;
  if (!geometry) return;
  const screen = middleOf(geometry.windows.profile);
  canvas.look(zoomAbout(geometry, 'profile', { screen, factor }));
}

/** Closer, farther, fit to view, and for a crew the whole boat: the same as wheel, pinch and keys do. */
export function LookButtons({ canvas, document }: { canvas: BenchCanvas; document: FitDocument }) {
  const isCrew = useStore(document, ({ fit }) => fit.seats.length > 1);
  const [showing, setShowing] = useState(canvas.shows);
  const other = showing === 'seat' ? 'boat' : 'seat';

  function show(what: typeof showing): void {
    canvas.showAll(what);
    setShowing(what);
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: buttons that change the view are no set of form fields
    <div className="drawing-look" role="group" aria-label={say('drawing.looking')} data-over-paper>
      <button
        type="button"
        className="button bare"
        aria-label={say('drawing.farther')}
        onClick={() => zoomBy(canvas, 1 / STEP)}
      >
        −
      </button>
      <button
        type="button"
        className="button bare"
        aria-label={say('drawing.closer')}
        onClick={() => zoomBy(canvas, STEP)}
      >
        +
      </button>
      <button type="button" className="button bare" onClick={() => show(showing)}>
        {say('drawing.fit')}
      </button>
      {isCrew && (
        <button type="button" className="button bare" onClick={() => show(other)}>
          {say(other === 'boat' ? 'drawing.whole-boat' : 'drawing.this-seat')}
        </button>
      )}
    </div>
  );
}
