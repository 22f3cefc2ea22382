import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { createSheetPdf, type SheetPdf } from '../../../../app/export/pdf/sheet-pdf.ts';

/** The file as text: pdfkit compresses what is drawn, not the objects of the structure. */
function fileOf(draw: (pdf: SheetPdf) => void, lang = 'hu'): string {
  const about = { title: 'Lap', subject: 'Szavak', keptAt: '2026-05-04T16:20:00Z', lang };
  const pdf = createSheetPdf(about);
  pdf.addPage({ width: 100, height: 60 });
  draw(pdf);
  return Buffer.from(pdf.bytes()).toString('latin1');
}

/** What is drawn, unpacked. */
function streamsOf(file: string): string {
  return [...file.matchAll(/stream\n([\s\S]*?)\nendstream/g)]
    .map(([, packed]) => {
      try {
        return inflateSync(Buffer.from(packed!, 'latin1')).toString('latin1');
      } catch {
        return '';
      }
    })
    .join('\n');
}

/** Names of the structure's elements with the names of their parents, from the file's objects (ISO 32000-1, 14.7.2). */
function elementsOf(file: string): string[] {
  const objects = new Map(
    [...file.matchAll(/(\d+) 0 obj\n<<\n([\s\S]*?)>>\nendobj/g)].map(([, id, body]) => [id!, body!]),
  );
  const nameOf = (id: string) => /\/S \/(\w+)/.exec(objects.get(id) ?? '')?.[1] ?? 'root';
  return [...objects.values()].flatMap((body) => {
    const [, name] = /\/S \/(\w+)/.exec(body) ?? [];
    const [, parent] = /\/P (\d+) 0 R/.exec(body) ?? [];
    return name && parent ? [`${nameOf(parent)} > ${name}`] : [];
  });
}

describe('a tagged PDF', () => {
  it('says that it is tagged, and in which language', () => {
    const file = fileOf((pdf) => pdf.text('Térd', [5, 10], { size: 4 }));
    expect(file).toMatch(/\/MarkInfo/);
    expect(file).toMatch(/\/Marked true/);
    expect(file).toMatch(/\/StructTreeRoot \d+ 0 R/);
    expect(file).toMatch(/\/Lang \(hu\)/);
  });

  it('has headings, paragraphs, and tables of rows and cells, in the order in which they are drawn', () => {
    const table = { tag: 'Table', key: {} } as const;
    const row = (pdf: SheetPdf, tag: 'TH' | 'TD', words: string) =>
      pdf.group('TR', () => pdf.group(tag, () => pdf.text(words, [5, 20], { size: 4, tag: 'Span' })), table);
    const file = fileOf((pdf) => {
      pdf.text('Heading', [5, 10], { size: 4, tag: 'H1' });
      row(pdf, 'TH', 'size');
      pdf.addPage({ width: 100, height: 60 });
      row(pdf, 'TD', '12');
      pdf.text('A sentence.', [5, 40], { size: 4 });
    });
    expect(file.match(/\/Scope \/Column/g)).toHaveLength(1);
    expect(elementsOf(file).sort()).toEqual(
      [
        'root > Document',
        'Document > H1',
        'Document > Table',
        'Table > TR',
        'Table > TR',
        'TR > TH',
        'TR > TD',
        'TH > Span',
        'TD > Span',
        'Document > P',
      ].sort(),
    );
  });

  it('marks a name in another script with its language (ISO 32000-1, 14.9.2)', () => {
    const name = (text: string, lang: string) => fileOf((pdf) => pdf.text(text, [5, 10], { size: 4 }), lang);
    const marked = (file: string) =>
      [...streamsOf(file).matchAll(/\/Span\s*<<\s*\/Lang \(([^)]+)\)/g)].map(([, l]) => l);
    expect(marked(name('Nagy ანა, 李娜', 'hu'))).toEqual(['ka', 'und-Hani']);
    expect(marked(name('李娜', 'zh'))).toEqual([]);
  });

  it('reads a figure by its alternative text alone', () => {
    const file = fileOf((pdf) =>
      pdf.figure('Seen from the side', () => {
        pdf.rect({ left: 5, top: 5, width: 20, height: 20 }, { stroke: '#000000' });
        pdf.text('label', [6, 10], { size: 3 });
      }),
    );
    expect(file).toContain('/Alt (Seen from the side)');
    expect(elementsOf(file).sort()).toEqual(['Document > Figure', 'root > Document']);
  });
});
