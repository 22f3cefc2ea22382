import { setOutPdf } from '../../app/export/set-out-pdf.ts';
import { templateDxf } from '../../app/export/template-dxf.ts';
import { templatePdf } from '../../app/export/template-pdf.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { templatesOf } from '../../core/setout/templates.ts';
import { finished, inventedStamp } from '../app/export/invented-stamp.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../core/setout/invented-set-out.ts';
import { english } from '../english.ts';
import { sideBySide } from './measure.ts';
import type { Found } from './row.ts';

/** Pages a second of the set-out sheet and of full-size templates, and drawings a second as DXF: whole files, fonts and all. */
export async function exportBench(): Promise<Found> {
  const out = inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } });
  const [hull, stamp] = [hullOfBoat(out.work.boat), inventedStamp()];
  const templates = templatesOf(out);
  const work = {
    'set-out sheet as PDF, A3': () => finished(setOutPdf(out, { hull, paper: 'A3', stamp })).steps,
    'templates as PDF, A4': () =>
      finished(templatePdf(templates, { paper: 'A4', stamp, words: english })).steps,
    'templates as DXF': () => templates.map((drawing) => templateDxf(drawing, stamp, english)).length,
  };
  const times = sideBySide(work, { rounds: 21, warmUpMs: 1000 });
  const names = Object.keys(work) as (keyof typeof work)[];
  return {
    rows: names.map((name) => ({ group: 'export', name: `${name}, whole`, ...times[name], ratio: null })),
    facts: names.map((name) => ({
      group: 'export',
      name,
      value: (1e6 * work[name]()) / (times[name].ownUs ?? times[name].medianUs),
      unit: name.endsWith('DXF') ? 'drawings a second' : 'pages a second',
    })),
  };
}
