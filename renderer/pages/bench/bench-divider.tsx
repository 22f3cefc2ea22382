import { useEffect, useState } from 'react';
import { useFit } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';

/** Share of the height that the drawing has in a narrow window, percent: in a four less, for two rows of seats stand under it. */
const SHARE = { least: 30, most: 80, usual: 66, four: 63, step: 5 } as const;

/** Kept while the program runs: the next bench opens with the same share. Null until somebody has moved the divider. */
let lastShare: number | null = null;

const within = (share: number) => Math.min(SHARE.most, Math.max(SHARE.least, Math.round(share)));

/** In a narrow window, between drawing and margin: dragged, or moved by the arrow keys. Sets the share on its parent. */
export function BenchDivider({ sheet }: { sheet: React.RefObject<HTMLElement | null> }) {
  const usual = useFit(({ fit }) => (fit.seats.length > 2 ? SHARE.four : SHARE.usual));
  const [moved, setMoved] = useState(lastShare);
  const share = moved ?? usual;
  useEffect(() => sheet.current?.style.setProperty('--drawing-share', `${share}%`), [sheet, share]);
  function set(to: number): void {
    lastShare = within(to);
    setMoved(lastShare);
  }
  function drag({ clientY, currentTarget, pointerId }: React.PointerEvent): void {
    const box = sheet.current?.getBoundingClientRect();
    if (box && currentTarget.hasPointerCapture(pointerId)) set((100 * (clientY - box.top)) / box.height);
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a separator that can be moved is no rule between texts
    <div
      className="bench-divider"
      role="separator"
      tabIndex={0}
      aria-orientation="horizontal"
      aria-label={say('card.divider')}
      aria-valuenow={share}
      aria-valuemin={SHARE.least}
      aria-valuemax={SHARE.most}
      onPointerDown={({ currentTarget, pointerId }) => currentTarget.setPointerCapture(pointerId)}
      onPointerMove={drag}
      onKeyDown={(event) => {
        const sign = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' ? 1 : 0;
        if (sign === 0) return;
        event.preventDefault();
        set(share + sign * SHARE.step);
      }}
    />
  );
}
