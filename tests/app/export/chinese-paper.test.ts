import { describe, expect, it } from 'vitest';
import { fontBytes, fontsOf } from '../../../app/export/pdf/font-shelf.ts';
import { createSheetPdf } from '../../../app/export/pdf/sheet-pdf.ts';
import { notEmpty } from '../../not-empty.ts';
import { readPdf } from './read-pdf.ts';

describe('a sheet with Chinese, Georgian and Armenian names', () => {
  it('has a font for every letter and carries only the letters it needs', () => {
    const pdf = createSheetPdf({
      title: '膝垫',
      subject: '',
      keptAt: '2026-05-04T10:00:00.000Z',
      lang: 'en',
    });
    pdf.addPage({ width: 210, height: 297 });
    pdf.text('李明 ნინო Անի 膝垫 175 毫米', [20, 20], { size: 5 });
    expect([...pdf.missing]).toEqual([]);
    const bytes = pdf.bytes();
    expect(readPdf(bytes).pages).toHaveLength(1);
    const whole = fontBytes(fontsOf('regular').find((name) => name.startsWith('chinese'))!);
    expect(bytes.length).toBeLessThan(whole.length / 10);
  });

  it('breaks Chinese between its characters, and no line begins with a closing mark', () => {
    const pdf = createSheetPdf({
      title: '',
      subject: '',
      keptAt: '2026-05-04T10:00:00.000Z',
      lang: 'zh',
    });
    const type = { size: 3 } as const;
    const text = '针叶木或胶合板叠层，木纹沿垫块；防水胶（每 25 mm 一孔）。';
    for (let width = 14; width < 60; width += 1) {
      const lines = pdf.lines(text, width, type);
      for (const line of notEmpty(lines)) {
        expect(pdf.widthOf(line, type), line).toBeLessThanOrEqual(width);
        expect(line).not.toMatch(/^[，。；：、！？）]|（$/);
      }
      expect(lines.join('').replaceAll(/\s/g, '')).toBe(text.replaceAll(/\s/g, ''));
    }
  });
});
