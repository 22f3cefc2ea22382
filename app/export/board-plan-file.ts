import { boardPlanDrawing } from '../../core/setout/board-plan-drawing.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import { pageCount } from '../../core/setout/template-pages.ts';
import type { ExportInput } from '../contract/paper-export.ts';
import type { Translator } from '../language/translator.ts';
import { changeOverPdf } from './change-over-pdf.ts';
import type { FilesOf } from './export-file.ts';
import { templatePdf } from './template-pdf.ts';

type Wanted = Extract<ExportInput['wanted'], { kind: 'board-plan' }>;

/** Papers of one board for everybody: the floorboard at full size, or the change-over card. `files` turns them into files. */
export function boardPlanWork(
  { fit, revision, wanted }: Omit<ExportInput, 'wanted'> & { readonly wanted: Wanted },
  words: Translator,
  files: FilesOf,
) {
  const { boat } = fit;
  const { plan, paper } = wanted;
  const stamp: SheetStamp = {
    fitName: boat.name,
    boatName: boat.name,
    athleteName: words.say('board.paper.everybody'),
    revision: null,
    revisionName: '',
    keptAt: revision.keptAt,
  };
  if (wanted.what === 'card') {
    const steps = files.pdf(changeOverPdf({ boat, plan, paper, stamp, words }), 'board.card', stamp);
    return { of: 1, steps };
  }
  const drawings = [boardPlanDrawing(boat, plan, words)];
  if (wanted.format === 'pdf') {
    const pages = templatePdf(drawings, { paper, stamp, words });
    return {
      of: pageCount(drawings, paper),
      steps: files.pdf(pages, 'board.paper.floorboard', stamp),
    };
  }
  return { of: 1, steps: files.drawings(drawings, wanted.format, stamp) };
}
