import { useMemo } from 'react';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { nameInSeat } from '../../bench/crew-names.ts';
import { ShapesSvg } from '../../drawing/shapes-svg.tsx';
import { pictureOf } from '../../drawing/view/picture.ts';
import { say, words } from '../../language/messages.ts';
import { inShownWords } from '../../language/shown-words.tsx';
import { type CrewDrawing, crewDrawing } from './crew-scene.ts';

/** The whole boat from above and from the side, as vectors: crisp on any screen and any paper. */
export const CrewFigure = inShownWords(({ fit, report }: { fit: Fit; report: Report }) => {
  const drawn = useMemo(() => crewDrawing(pictureOf(fit, report)), [fit, report]);
  const { width, height, views, pixelsPerMetre } = drawn;
  const names = words().row(fit.seats.map((_, seat) => nameInSeat(fit, seat)));
  return (
    <figure className="crew-figure">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={say('crew.sheet.figure', { boat: fit.boat.name, names })}
      >
        {views.map(({ top, height: tall, corner: [left, up], layers }) => (
          <svg
            key={top}
            aria-hidden="true"
            y={top}
            width={width}
            height={tall}
            viewBox={`${left * pixelsPerMetre} ${-up * pixelsPerMetre} ${width} ${tall}`}
          >
            {layers.map(({ shapes, opacity }) => (
              <g key={opacity} opacity={opacity}>
                <ShapesSvg shapes={shapes} perMetre={pixelsPerMetre} />
              </g>
            ))}
          </svg>
        ))}
        <Marks drawn={drawn} />
      </svg>
    </figure>
  );
});

/** The seats' marks and the centre mark through both views, with their names over each; bow and stern named. */
const Marks = inShownWords(({ drawn: { views, marks, ends } }: { drawn: CrewDrawing }) => {
  return (
    <g className="crew-marks">
      {views.flatMap(({ top, height }) =>
        marks.map(({ x, name, seat }) => (
          <g key={`${top} ${name}`} data-seat={seat || undefined}>
            <path d={`M${x} ${top - 4}V${top + height}`} />
            <text x={x} y={top - 10}>
              {name}
            </text>
          </g>
        )),
      )}
      <text className="crew-stern" x={ends.stern} y={ends.y}>
        {say('stroke.line.stern')}
      </text>
      <text className="crew-bow" x={ends.bow} y={ends.y}>
        {say('stroke.line.bow')}
      </text>
    </g>
  );
});
