import { describe, expect, it } from 'vitest';
import { drawView } from '../../../app/export/pdf/draw-shapes.ts';
import { scriptsOf } from '../../../app/export/pdf/font-shelf.ts';
import { createSheetPdf } from '../../../app/export/pdf/sheet-pdf.ts';
import { lineThrough, type Shape } from '../../../core/graphics/shape.ts';
import { readPdf } from './read-pdf.ts';

const about = {
  title: 'A sheet',
  subject: 'Words',
  keptAt: '2026-05-04T16:20:00Z',
  lang: 'en',
};

/** Words as they come out of the file after they went in. */
function roundTrip(words: string): { text: string; missing: string[] } {
  const pdf = createSheetPdf(about);
  pdf.addPage({ width: 200, height: 40 });
  pdf.text(words, [5, 20], { size: 4 });
  const { texts } = readPdf(pdf.bytes()).pages[0]!;
  return { text: texts.map(({ text }) => text).join(''), missing: [...pdf.missing] };
}

/** Invented names that use the letters of European languages, a few of each. */
const NAMES = [
  ['Czech, Slovak', 'Žofie Ďuriš Ľuboš Řehoř Ňaďa Ťapák Ůlová'],
  ['Polish', 'Łucja Świątek Żółć Ćmiel Ńem Ęga'],
  ['Hungarian', 'Őze Űri Győző Kürtös'],
  ['Romanian', 'Ștefan Țînțar Ăscu Îoana'],
  ['Turkish', 'İpek Işıl Çağrı Gökçeoğlu Şahin'],
  ['Icelandic, Faroese', 'Þórður Æsa Ðólmi Ýr'],
  ['Scandinavian', 'Åse Øyvind Ærø Öberg Ärlig'],
  ['Baltic', 'Ģirts Ķēniņš Ļūdza Ūsaitė Įvaras Šīle'],
  ['Maltese', 'Ħaġar Ġorġ Żammit Ċensu'],
  ['Welsh, Irish, Gaelic', 'Ŵyn Ŷsgol Ẁenn Éamon Ìle Ḃrian'],
  ['French, Catalan, Portuguese', 'Œuvrard Çelà Îlot col·la João Ŷ'],
  ['German', 'Groß Müßig ẞtolz Jörg'],
  ['Croatian, Serbian', 'Đurđa Čičak Šćepan Ǆ'],
  ['Sami', 'Ŋáđŋi Čáhci Ŧorre'],
  ['Greek', 'Ιωάννης Ψύλλος Ώρα Γεωργία Ϊων'],
  ['Russian, Bulgarian', 'Щёкина Жуков Эля Юрьев Цветанъ'],
  ['Ukrainian, Belarusian', 'Їжакевич Євген Ґалаґан Ўладзь'],
  ['Serbian, Macedonian', 'Ђорђе Љиљана Његош Ћирић Џемс Ѓорѓи Ќуќа Ѕвезда'],
  ['Georgian', 'გიორგი ბერიძე ჟღენტი ჭყონია'],
  ['Georgian capitals', 'ᲒᲘᲝᲠᲒᲘ'],
  ['Armenian', 'Անահիտ Եղիազարյան Ջիվան Օֆելյա և'],
] as const;

describe('names in European scripts', () => {
  it.each(NAMES)('%s come out of the file as they went in', (_, name) => {
    const { text, missing } = roundTrip(name);
    expect(missing).toEqual([]);
    expect(text.normalize('NFKC')).toBe(name.normalize('NFKC'));
  });

  it('brings letters with loose accents into one letter', () => {
    const loose = 'Zofie\u0301 C\u030Ci\u0301z\u030Cek';
    const { text, missing } = roundTrip(loose);
    expect(missing).toEqual([]);
    expect(text).toBe(loose.normalize('NFC'));
  });

  it('keeps the order of mixed scripts', () => {
    const mixed = 'K 35 left · Жанна & Ιώ, Łódź – 12,5° ± 2 × ½';
    expect(roundTrip(mixed).text).toBe(mixed);
  });

  it('names a script that no font has, and shows a box in its place', () => {
    const { text, missing } = roundTrip('Anna कख Lee');
    expect(missing).toEqual(['क', 'ख']);
    expect(text).toBe('Anna □□ Lee');
    expect(scriptsOf(missing)).toEqual(['Devanagari']);
  });
});

describe('a sheet', () => {
  it('measures words as wide as it draws them', () => {
    const pdf = createSheetPdf(about);
    pdf.addPage({ width: 200, height: 40 });
    const words = 'Žofie Łuczak kneels';
    const width = pdf.widthOf(words, { size: 5 });
    expect(pdf.text(words, [0, 10], { size: 5 })).toBeCloseTo(width, 9);
    pdf.text('end', [100, 20], { size: 5, anchor: 'end' });
    const { texts } = readPdf(pdf.bytes()).pages[0]!;
    const end = texts.find(({ text }) => text === 'end')!;
    expect(end.at[0]).toBeCloseTo(100 - pdf.widthOf('end', { size: 5 }), 3);
  });

  it('breaks lines at words and loses none', () => {
    const pdf = createSheetPdf(about);
    const words = 'Drill the floorboard only: find out what lies under it and set a depth stop.';
    const lines = pdf.lines(words, 40, { size: 3 });
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(words);
    for (const line of lines) expect(pdf.widthOf(line, { size: 3 })).toBeLessThanOrEqual(40);
  });

  it('breaks no measure: 5 15/16 and 200 mm stay whole', () => {
    const pdf = createSheetPdf(about);
    for (let width = 6; width < 40; width++) {
      const lines = pdf.lines('10 1/4 × 6 5/16 × 5 15/16, ± 3 mm over 200 mm', width, { size: 3 });
      const all = lines.join('|');
      for (const whole of ['10 1/4', '6 5/16', '5 15/16', '± 3 mm', '200 mm'])
        expect(all.replaceAll('\u{a0}', ' ')).toContain(whole);
    }
  });

  it('breaks no value from its doubt, no figure from its unit', () => {
    const pdf = createSheetPdf(about);
    for (const whole of [
      '0.56 ± 0.06',
      '0.56\u{a0}±\u{a0}0.06\u{202f}s',
      '46\u{202f}cm',
      '6\u{202f}7/8\u{202f}in',
    ])
      expect(pdf.lines(`pitch ${whole} here`, 8, { size: 3 })).toEqual([
        'pitch',
        whole.replaceAll(' ', '\u{a0}'),
        'here',
      ]);
  });

  it('draws a figure’s lines as heavy at 1:1 as at 1:20', () => {
    const contour: Shape = {
      kind: 'area',
      of: 'trunk',
      fills: [
        {
          role: 'skin',
          rings: [
            lineThrough([
              [0, 0],
              [0.4, 0],
              [0.4, 0.5],
            ]),
          ],
        },
      ],
      outline: { role: 'figureLine', weight: 'contour' },
    };
    const detail: Shape = {
      kind: 'line',
      of: 'head',
      role: 'figureLine',
      weight: 'detail',
      lines: [
        lineThrough([
          [0, 0],
          [0.3, 0.3],
        ]),
      ],
    };
    const widthsAt = (perMetre: number) => {
      const pdf = createSheetPdf(about);
      pdf.addPage({ width: 600, height: 600 });
      const widths: (number | undefined)[] = [];
      const note = (_: unknown, { stroke, width }: { stroke?: string; width?: number }) =>
        void (stroke && widths.push(width));
      const box = { left: 0, top: 0, width: 600, height: 600 };
      drawView({ ...pdf, path: note, shape: note }, [contour, detail], { box, from: [0, 0], perMetre });
      return widths;
    };
    // The contour's outer half shows: its inner half lies under the fill.
    expect(widthsAt(1000)).toEqual([0.4, 0.14]);
    expect(widthsAt(50)).toEqual(widthsAt(1000));
  });

  it('draws in millimetres from the top left corner', () => {
    const pdf = createSheetPdf(about);
    pdf.addPage({ width: 210, height: 297 });
    pdf.path(
      [
        [10, 20],
        [110, 20],
      ],
      { stroke: '#000000' },
    );
    const [line] = readPdf(pdf.bytes()).pages[0]!.paths;
    expect(line!.points[0]![0]).toBeCloseTo(10, 4);
    expect(line!.points[0]![1]).toBeCloseTo(277, 4);
    expect(line!.points[1]![0]).toBeCloseTo(110, 4);
  });
});
