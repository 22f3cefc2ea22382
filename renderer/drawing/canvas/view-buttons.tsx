import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { FitDocument } from '../../document/fit-document.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import type { BenchCanvas } from './bench-canvas.ts';
import { fitAgain, panWithKey, zoomStep } from './view-keys.ts';

/** Closer, farther, and back and forth between the cockpit and the whole boat: the same as wheel, pinch and keys do. */
export function ViewButtons({ canvas, document }: { canvas: BenchCanvas; document: FitDocument }) {
  const isCrew = useStore(document, ({ fit }) => fit.seats.length > 1);
  const whole = useLeadsToWhole(canvas);
  const seat = isCrew ? 'drawing.this-seat' : 'drawing.cockpit';
  return (
    <div
      className="drawing-look"
      role="toolbar"
      aria-label={say('drawing.looking')}
      data-over-paper
      onKeyDown={(event) => panWithKey(canvas, event)}
    >
      <Button
        look="bare"
        className="look-button"
        aria-label={say('drawing.farther')}
        onClick={() => zoomStep(canvas, -1)}
      >
        −
      </Button>
      <Button
        look="bare"
        className="look-button"
        aria-label={say('drawing.closer')}
        onClick={() => zoomStep(canvas, 1)}
      >
        +
      </Button>
      <Button
        look="bare"
        className="look-button"
        aria-keyshortcuts="0"
        title={say('drawing.fit.key')}
        onClick={() => fitAgain(canvas)}
      >
        {say(whole ? 'drawing.whole-boat' : seat)}
      </Button>
    </div>
  );
}

/** Whether fitting the views again shows the whole boat: the cockpit is fitted already. */
function useLeadsToWhole(canvas: BenchCanvas): boolean {
  const [whole, setWhole] = useState(true);
  useEffect(() => canvas.onDrawn(() => setWhole(canvas.isFitted && canvas.shows === 'seat')), [canvas]);
  return whole;
}
