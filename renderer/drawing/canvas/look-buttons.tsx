import { useStore } from 'zustand';
import type { FitDocument } from '../../document/fit-document.ts';
import { say } from '../../language/messages.ts';
import type { BenchCanvas } from './bench-canvas.ts';
import { panWithKey, zoomStep } from './look-keys.ts';

/** Closer, farther, fit to view, and for a crew the whole boat: the same as wheel, pinch and keys do. */
export function LookButtons({ canvas, document }: { canvas: BenchCanvas; document: FitDocument }) {
  const isCrew = useStore(document, ({ fit }) => fit.seats.length > 1);
  return (
    <div
      className="drawing-look"
      role="toolbar"
      aria-label={say('drawing.looking')}
      data-over-paper
      onKeyDown={(event) => panWithKey(canvas, event)}
    >
      <button
        type="button"
        className="button bare"
        aria-label={say('drawing.farther')}
        onClick={() => zoomStep(canvas, -1)}
      >
        −
      </button>
      <button
        type="button"
        className="button bare"
        aria-label={say('drawing.closer')}
        onClick={() => zoomStep(canvas, 1)}
      >
        +
      </button>
      <button type="button" className="button bare" onClick={() => canvas.showAll('seat')}>
        {say(isCrew ? 'drawing.this-seat' : 'drawing.fit')}
      </button>
      {isCrew && (
        <button type="button" className="button bare" onClick={() => canvas.showAll('boat')}>
          {say('drawing.whole-boat')}
        </button>
      )}
    </div>
  );
}
