import { describe, expect, it } from 'vitest';
import { LANGUAGE_TAGS } from '../../../../app/contract/display.ts';
import { createSheetPdf } from '../../../../app/export/pdf/sheet-pdf.ts';
import { loadMessages } from '../../../../app/language/messages.ts';
import { notEmpty } from '../../../not-empty.ts';

describe('letters and symbols on paper', () => {
  it('each that the texts of any language have is in a font', async () => {
    const letters = new Set<string>();
    for (const tag of LANGUAGE_TAGS) {
      const texts = notEmpty(Object.values(await loadMessages(tag)));
      for (const letter of texts.join('').normalize('NFC')) letters.add(letter);
    }
    const pdf = createSheetPdf({
      title: '',
      subject: '',
      keptAt: '2026-05-04T10:00:00.000Z',
      lang: 'en',
    });
    pdf.addPage({ width: 210, height: 297 });
    pdf.text([...letters].join(''), [20, 20], { size: 5 });
    expect([...pdf.missing]).toEqual([]);
  });
});
