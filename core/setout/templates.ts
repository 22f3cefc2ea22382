import { padEndsTemplate, restEndsTemplate } from './end-templates.ts';
import { facingText } from './facing.ts';
import { floorboardTemplate } from './floorboard-template.ts';
import { frontFootTemplate } from './foot-template.ts';
import { padBlockTemplate, padRecessTemplate } from './pad-templates.ts';
import { frontWedgeTemplate, rearRestTemplate } from './rest-templates.ts';
import type { SeatSetOut } from './set-out.ts';
import type { TemplateDrawing } from './template-drawing.ts';
import { TEMPLATE_IDS, type TemplateId } from './template-ids.ts';

/** What draws each template; null where the fit has no use for it. */
const MAKERS: Readonly<Record<TemplateId, (out: SeatSetOut) => TemplateDrawing | null>> = {
  'pad-recess': padRecessTemplate,
  'pad-block': padBlockTemplate,
  'pad-ends': padEndsTemplate,
  'rear-rest': rearRestTemplate,
  'rest-ends': restEndsTemplate,
  'front-wedge': frontWedgeTemplate,
  'front-foot': frontFootTemplate,
  floorboard: floorboardTemplate,
};

/**
 * The templates asked for, in the order of the work; those that this seat does not need are left out. Each is a drawing at
 * full size in millimetres, whatever units its figures are written in.
 */
export function templatesOf(out: SeatSetOut, ids: readonly TemplateId[] = TEMPLATE_IDS): TemplateDrawing[] {
  return TEMPLATE_IDS.filter((id) => ids.includes(id) && !onShelf(out, id)).flatMap((id) => {
    const drawing = MAKERS[id](out);
    return drawing ? [{ ...drawing, facing: facingText(out, id) }] : [];
  });
}

/** Whether a template is of a block that lies on the boat's shelf: nothing of it is sawn or carved. */
function onShelf({ work: { shelf } }: SeatSetOut, id: TemplateId): boolean {
  if (id === 'pad-recess' || id === 'pad-block') return shelf.pad !== null;
  return id === 'rear-rest' && shelf.rest !== null;
}
