import { floorboardTemplate } from './floorboard-template.ts';
import { frontFootTemplate } from './foot-template.ts';
import { padBlockTemplate, padRecessTemplate } from './pad-templates.ts';
import { frontWedgeTemplate, rearRestTemplate } from './rest-templates.ts';
import type { SeatSetOut } from './set-out.ts';
import type { TemplateDrawing } from './template-drawing.ts';
import { TEMPLATE_IDS, type TemplateId } from './template-ids.ts';

const MAKERS: Readonly<Record<TemplateId, (out: SeatSetOut) => TemplateDrawing | null>> = {
  'pad-recess': padRecessTemplate,
  'pad-block': padBlockTemplate,
  'rear-rest': rearRestTemplate,
  'front-wedge': frontWedgeTemplate,
  'front-foot': frontFootTemplate,
  floorboard: floorboardTemplate,
};

/**
 * The templates asked for, in the order of the work; those that this seat does not need are left out. Each is a drawing at
 * full size in millimetres, whatever units its figures are written in.
 */
export function templatesOf(out: SeatSetOut, ids: readonly TemplateId[] = TEMPLATE_IDS): TemplateDrawing[] {
  return TEMPLATE_IDS.filter((id) => ids.includes(id)).flatMap((id) => MAKERS[id](out) ?? []);
}
