import { useMemo } from 'react';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import type { PaperName } from '../../../core/setout/paper.ts';
import { onPaper } from '../../../core/setout/paper-marks.ts';
import type { TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import type { TemplateId } from '../../../core/setout/template-ids.ts';
import { pageCount } from '../../../core/setout/template-pages.ts';
import { bareLength, type SheetUnits, writtenLength } from '../../../core/text/sheet-length.ts';
import { say, sayCount } from '../../language/messages.ts';
import { Tick } from '../../ui/fields/tick.tsx';
import { PaperDrawing } from './paper-drawing.tsx';

/** White around a template's picture, millimetres at full size. */
const AROUND_MM = 6;

/** The templates that this seat needs, each with its picture, size and pages; those ticked are made. */
export function TemplateChoice(props: {
  drawings: readonly TemplateDrawing[];
  chosen: readonly TemplateId[];
  paper: PaperName;
  units: SheetUnits;
  onChange: (chosen: readonly TemplateId[]) => void;
}) {
  const { drawings, chosen } = props;
  return (
    <ul className="template-list">
      {drawings.map((drawing) => (
        <TemplateCard
          key={drawing.id}
          drawing={drawing}
          paper={props.paper}
          units={props.units}
          isOn={chosen.includes(drawing.id)}
          onChange={(on) =>
            props.onChange(on ? [...chosen, drawing.id] : chosen.filter((id) => id !== drawing.id))
          }
        />
      ))}
    </ul>
  );
}

function TemplateCard(props: {
  drawing: TemplateDrawing;
  paper: PaperName;
  units: SheetUnits;
  isOn: boolean;
  onChange: (on: boolean) => void;
}) {
  const { drawing, paper, units } = props;
  const { drawn, part, wide, tall } = useMemo(() => pictureOf(drawing), [drawing]);
  const pages = useMemo(() => pageCount([drawing], paper), [drawing, paper]);
  const size = { wide: bareLength(wide, units), tall: writtenLength(tall, units) };
  return (
    <li className="template-card" data-on={props.isOn || undefined}>
      <PaperDrawing
        shapes={drawn}
        part={part}
        label={say('setout.templates.picture', { title: drawing.title })}
      />
      <Tick name={drawing.title} isOn={props.isOn} onChange={props.onChange} />
      <p className="field-hint">
        {say('setout.templates.size', { ...size, pages: sayCount('setout.templates.pages', pages), paper })}
      </p>
    </li>
  );
}

/** A template's shapes at full size, and the part of the paper they take. */
function pictureOf({ shapes }: TemplateDrawing) {
  const { minX, minY, maxX, maxY } = boundsOf(shapes);
  const [wide, tall] = [maxX - minX, maxY - minY];
  return {
    drawn: onPaper(shapes, { scale: 1, origin: [AROUND_MM - minX, AROUND_MM + maxY] }),
    part: { left: 0, top: 0, width: wide + 2 * AROUND_MM, height: tall + 2 * AROUND_MM },
    wide,
    tall,
  };
}
