import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { sectionsDrawing } from '../../core/setout/sections-drawing.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import { pageCount } from '../../core/setout/template-pages.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { fileName } from '../export/file-name.ts';
import { templateDxf } from '../export/template-dxf.ts';
import { templatePdf } from '../export/template-pdf.ts';
import { templateSvg } from '../export/template-svg.ts';
import { translatorOf } from '../language/spoken.ts';
import { boats } from '../store/roster.ts';
import { done, missing, type Program } from './program.ts';

const MIME = { pdf: 'application/pdf', svg: 'image/svg+xml', dxf: 'image/vnd.dxf' } as const;

/** Hands a boat's sections at full size to the person, as a drawing or as pages to print. */
export async function exportSections(
  { store, shell, work, turn }: Program,
  { id, format, paper, units, language }: ParsedInput<'boats.sections'>,
): Promise<CallResult<CallOutput<'boats.sections'>>> {
  const record = boats.get(store, id);
  if (!record) return missing('boat');
  const words = await translatorOf(language);
  const { boat, changedAt } = record;
  const stamp: SheetStamp = {
    fitName: boat.name,
    boatName: boat.name,
    athleteName: '',
    revision: null,
    revisionName: '',
    keptAt: changedAt,
  };
  const drawing = sectionsDrawing(hullOfBoat(boat), { words, units });
  const name = fileName([drawing.title, boat.name], format);
  if (format !== 'pdf') {
    const text = format === 'svg' ? templateSvg(drawing, stamp, words) : templateDxf(drawing, stamp, words);
    return done(await shell.deliver({ name, mime: MIME[format], bytes: new TextEncoder().encode(text) }));
  }
  const of = pageCount([drawing], paper);
  const pages = templatePdf([drawing], { paper, stamp, words, units });
  const { bytes } = await turn.alone(() => work.run({ what: 'export', of }, pages));
  return done(await shell.deliver({ name, mime: MIME.pdf, bytes }));
}
