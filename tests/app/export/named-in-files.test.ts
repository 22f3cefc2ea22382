import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { exportWork } from '../../../app/export/export-file.ts';
import { inventedFit } from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { finished } from './invented-stamp.ts';

/** Typefaces that are sold, programs and libraries: none is named in a file that leaves the program. (PDF's own format names Adobe.) */
const NAMED =
  /helvetica|arial|gill sans|futura|optima|calibri|georgia|times new|verdana|courier|autocad|pdfkit|tarikjabiri|inkscape/i;
/** Families that every file may name: under the SIL Open Font License 1.1. */
const OPEN_FAMILIES = /^[A-Z]{6}\+(YsabeauOffice|NotoSans)/;

function exported(format: 'pdf' | 'svg' | 'dxf'): Uint8Array {
  const work = exportWork(
    {
      language: 'en',
      fit: inventedFit(),
      revision: { number: null, name: '', mark: '', keptAt: '2026-05-04T16:20:00Z' },
      wanted: {
        kind: 'templates',
        seat: 0,
        format,
        templates: ['pad-recess'],
        paper: 'A4',
        options: { units: 'mm' },
      },
    },
    english,
  );
  return finished(work!.steps).made.bytes;
}

describe('what exported files name', () => {
  it('PDF: the program as maker, and open typefaces only', () => {
    const file = Buffer.from(exported('pdf')).toString('latin1');
    expect(file).toMatch(/Producer>Kneelwright</);
    expect(NAMED.exec(file)?.[0]).toBeUndefined();
    const fonts = [...file.matchAll(/\/BaseFont \/(\S+)/g)].map(([, name]) => name!);
    for (const font of notEmpty(fonts)) expect(font).toMatch(OPEN_FAMILIES);
  });

  it.each(['svg', 'dxf'] as const)('%s: no typeface, program or library', (format) => {
    const bytes = exported(format);
    const files = bytes[0] === 0x50 ? Object.values(unzipSync(bytes)) : [bytes];
    for (const file of notEmpty(files))
      expect(NAMED.exec(new TextDecoder().decode(file))?.[0]).toBeUndefined();
  });
});
