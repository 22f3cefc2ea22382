import { useId, useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { useFormat } from '../../display/use-display.ts';
import { pictureOf } from '../../drawing/view/picture.ts';
import { say } from '../../language/messages.ts';
import { crewDrawing } from './crew-scene.ts';

/** The whole boat from above and from the side, as vectors: crisp on any screen and any paper. */
export function CrewFigure({ fit, report }: { fit: Fit; report: Report }) {
  const format = useFormat();
  const id = useId();
  const { surface, width, height } = useMemo(
    () => crewDrawing(pictureOf(fit, report), format),
    [fit, report, format],
  );
  const names = fit.seats.map((_, seat) => nameInSeat(fit, seat)).join(', ');
  const seen = (window: number | null) => (window === null ? undefined : `url(#${id}${window})`);
  return (
    <figure className="crew-figure">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={say('crew.sheet.figure', { boat: fit.boat.name, names })}
      >
        <defs>
          {surface.windows.map((path, window) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: windows are told apart by their place
            <clipPath key={window} id={`${id}${window}`}>
              <path d={path} />
            </clipPath>
          ))}
        </defs>
        {surface.marks.map(({ path, words, style, window }, k) =>
          words ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: marks are told apart by their place
            <text key={k} x={words.x} y={words.y} style={style} clipPath={seen(window)}>
              {words.text}
            </text>
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: marks are told apart by their place
            <path key={k} d={path} style={style} clipPath={seen(window)} />
          ),
        )}
      </svg>
    </figure>
  );
}
