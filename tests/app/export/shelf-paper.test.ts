import { expect, it } from 'vitest';
import { setOutPdf } from '../../../app/export/set-out-pdf.ts';
import { templatePdf } from '../../../app/export/template-pdf.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { padFromStock, restFromStock } from '../../../core/document/from-stock.ts';
import { stockSchema } from '../../../core/document/stock-schema.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { blockForms } from '../../../core/setout/block-forms.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { valuesOf } from '../../core/example/values-of.ts';
import { inventedFit } from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { finished, inventedStamp } from './invented-stamp.ts';
import { readPdf, wordsOf } from './read-pdf.ts';

/** A boat with a pad of 15 mm foam and a rest on its shelf, and a seat that takes the pad, or both. */
function fromShelf(what: 'pad' | 'both'): Fit {
  const fit = inventedFit();
  const stock = stockSchema.parse({
    pads: [
      {
        name: 'Blue pad',
        lengthM: 0.24,
        widthM: 0.15,
        heightM: 0.09,
        recessDepthM: 0.015,
        foamM: 0.015,
        foamGiveM: 0.01,
      },
    ],
    rests: [{ name: 'Old rest', widthM: 0.13, heightM: 0.055, tiltDeg: 55 }],
  });
  const [seat] = fit.seats;
  return {
    ...fit,
    boat: { ...fit.boat, stock },
    seats: [
      {
        ...seat!,
        kneePad: padFromStock(seat!.kneePad, stock.pads[0]!),
        rearRest: what === 'both' ? restFromStock(seat!.rearRest, stock.rests[0]!) : seat!.rearRest,
      },
    ],
  };
}

function papersOf(fit: Fit): { sheet: string; templates: string; blocks: string[] } {
  const out = setOutSeat({ fit, report: valuesOf(fit), index: 0, options: { units: 'mm' }, words: english })!;
  const given = { paper: 'A4', stamp: inventedStamp() } as const;
  const read = ({ made }: { made: { bytes: Uint8Array } }) =>
    readPdf(made.bytes).pages.map(wordsOf).join(' ');
  return {
    sheet: read(finished(setOutPdf(out, { ...given, hull: hullOfBoat(fit.boat) }))),
    templates: read(finished(templatePdf(templatesOf(out), { ...given, words: english }))),
    blocks: blockForms(out).map(({ id }) => id),
  };
}

it('a pad from the shelf is fetched, not sawn: on the sheet, among templates and solids', () => {
  const { sheet, templates, blocks } = papersOf(fromShelf('pad'));
  expect(sheet).toContain('Pad “Blue pad” from the shelf, with recess and 15 mm foam: saw nothing.');
  expect(sheet).toContain('Pad block (on the shelf: Blue pad)');
  expect(sheet).not.toContain('Saw the pad block');
  expect(sheet).not.toContain('10 mm foam');
  expect(sheet).not.toContain('Recess: depth');
  expect(sheet).not.toContain('Foam of the recess');
  expect(sheet).not.toContain('estimate: measure before carving');
  // The rest is sawn as ever.
  expect(sheet).toContain('Saw the rest to its profile');
  expect(templates).not.toMatch(/Knee pad: (recess|block)/);
  expect(templates).toContain('Rear foot rest: wedge');
  expect(blocks).toHaveLength(1);
});

it('with the rest from the shelf too nothing is sawn at all', () => {
  const { sheet, templates, blocks } = papersOf(fromShelf('both'));
  expect(sheet).toContain('Rest “Old rest” from the shelf: saw nothing.');
  expect(sheet).not.toContain('Saw the');
  expect(templates).not.toMatch(/wedge|Knee pad: (recess|block)/);
  expect(templates).toContain('Floorboard: drilling');
  expect(blocks).toEqual([]);
});
