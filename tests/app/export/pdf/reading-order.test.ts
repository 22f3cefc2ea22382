import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { setOutPdf } from '../../../../app/export/set-out-pdf.ts';
import { takeHomeOf } from '../../../../app/export/take-home-of-fit.ts';
import { takeHomePdf } from '../../../../app/export/take-home-pdf.ts';
import { templatePdf } from '../../../../app/export/template-pdf.ts';
import { loadMessages } from '../../../../app/language/messages.ts';
import { translator } from '../../../../app/language/translator.ts';
import { hullOfBoat } from '../../../../core/hull/hull-of-boat.ts';
import { templatesOf } from '../../../../core/setout/templates.ts';
import { inventedFit, inventedSetOut, ROWS_OF_HOLES } from '../../../core/setout/invented-set-out.ts';
import { notEmpty } from '../../../not-empty.ts';
import { finished, inventedStamp } from '../invented-stamp.ts';

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly children?: readonly Node[];
}

/** Every element of a page's structure, in reading order. */
const elements = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(elements)];
const pagesOf = (file: PDFDocumentProxy) =>
  Promise.all(Array.from({ length: file.numPages }, (_, k) => file.getPage(k + 1)));

const hungarian = translator('hu', await loadMessages('hu'));
const stamp = inventedStamp();

/** Each paper, printed in Hungarian and opened with a reader that has nothing of the program that wrote it (Mozilla's pdf.js). */
const papers = {
  'workshop sheet': () => {
    const out = inventedSetOut({ hardware: ROWS_OF_HOLES, words: hungarian });
    return finished(setOutPdf(out, { hull: hullOfBoat(out.work.boat), paper: 'A4', stamp })).made.bytes;
  },
  templates: () => {
    const drawings = templatesOf(inventedSetOut({ words: hungarian }));
    return finished(templatePdf(drawings, { paper: 'A4', stamp, words: hungarian })).made.bytes;
  },
  'athlete’s page': () => {
    const page = takeHomeOf(inventedFit(), {
      index: 0,
      before: null,
      reason: '',
      said: { lines: [], open: false },
      mass: 'hidden',
      units: 'mm',
      words: hungarian,
      photographs: [],
    })!;
    return finished(takeHomePdf(page, { paper: 'A4', stamp })).made.bytes;
  },
};

describe.each(Object.entries(papers))('the %s, read by pdf.js', (paper, print) => {
  const opened = getDocument({ data: new Uint8Array(print()), verbosity: 0 }).promise;

  it('has a title, a language, and says that it is tagged', async () => {
    const file = await opened;
    const { info } = (await file.getMetadata()) as { info: Record<string, unknown> };
    expect(info.Title).toMatch(/\p{L}{3}/u);
    expect(info.Language).toBe('hu');
    const marked = (await file.getMarkInfo()) as unknown as ReadonlyMap<string, boolean>;
    expect(marked.get('Marked')).toBe(true);
  });

  it('has headings in order, figures with a text, and tables of rows with heads', async () => {
    const trees = await Promise.all((await pagesOf(await opened)).map((page) => page.getStructTree()));
    const all = notEmpty(trees).flatMap((tree) => elements(tree as Node));
    const headings = notEmpty(all.filter(({ role }) => /^H\d$/.test(role ?? '')).map(({ role }) => role!));
    expect(headings[0]).toBe('H1');
    expect(new Set(headings).size).toBeLessThanOrEqual(2);
    for (const figure of notEmpty(all.filter(({ role }) => role === 'Figure')))
      expect(figure.alt).toMatch(/\p{L}{3}/u);
    for (const table of all.filter(({ role }) => role === 'Table')) {
      const rows = (table.children ?? []).filter(({ role }) => role === 'TR');
      expect(rows).toHaveLength((table.children ?? []).length);
      for (const row of rows)
        expect((row.children ?? []).every(({ role }) => role === 'TH' || role === 'TD')).toBe(true);
    }
  });

  it('reads a list as items, each with one body (ISO 32000-1, 14.8.4.3.3)', async () => {
    const trees = await Promise.all((await pagesOf(await opened)).map((page) => page.getStructTree()));
    const all = trees.flatMap((tree) => elements(tree as Node));
    const rolesIn = ({ children = [] }: Node) => children.map(({ role }) => role).join(' ');
    for (const list of all.filter(({ role }) => role === 'L')) expect(rolesIn(list)).toMatch(/^LI( LI)*$/);
    for (const item of all.filter(({ role }) => role === 'LI'))
      expect(rolesIn(item)).toMatch(/^(Lbl )?LBody$/);
    const isList = ({ role }: Node) => role === 'L';
    expect(all.some(isList)).toBe(paper !== 'templates');
  });

  it('marks all that is drawn: in the tree, or an artifact', async () => {
    for (const page of notEmpty(await pagesOf(await opened))) {
      const told = new Set(
        elements((await page.getStructTree()) as Node).flatMap(({ type, ...node }) =>
          type === 'content' ? [(node as { id: string }).id] : [],
        ),
      );
      const { items } = await page.getTextContent({ includeMarkedContent: true });
      const open: string[] = [];
      for (const item of items) {
        if ('str' in item) {
          if (item.str.trim())
            expect(
              open.some((id) => id === 'artifact' || told.has(id)),
              item.str,
            ).toBe(true);
        } else if (item.type === 'endMarkedContent') open.pop();
        else open.push('tag' in item && item.tag === 'Artifact' ? 'artifact' : (item.id ?? ''));
      }
    }
  });
});
