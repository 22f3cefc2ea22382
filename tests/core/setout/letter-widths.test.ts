import { expect, it } from 'vitest';
import { createSheetPdf } from '../../../app/export/pdf/sheet-pdf.ts';
import { lettersWidth } from '../../../core/setout/letter-widths.ts';
import { CAPITALS_OVER_SIZE } from '../../../core/setout/sheet-inks.ts';
import { englishMessages } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';

it('takes words for no narrower than their font sets them, and for at most a sixth wider', () => {
  const about = { title: '', subject: '', keptAt: '2026-05-04T16:20:00Z', lang: 'en' };
  const pdf = createSheetPdf(about);
  pdf.addPage({ width: 100, height: 100 });
  const texts = englishMessages('template.').map(([, text]) => text);
  for (const text of notEmpty([...texts, '1 234 5/32', 'Žofie Łuczak ± 3 mm', 'ПОЛ жёлтый', '跪垫'])) {
    const set = pdf.widthOf(text, { size: 1 }) / CAPITALS_OVER_SIZE;
    const reckoned = lettersWidth(text);
    expect(reckoned / set, text).toBeGreaterThanOrEqual(1 - 1e-9);
    if (/^[\x20-\x7e]+$/.test(text)) expect(reckoned / set, text).toBeLessThan(7 / 6);
  }
});
