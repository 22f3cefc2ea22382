/** What a piece of a page is to a reader who does not see it, by its name in PDF (ISO 32000-1, 14.8.4). */
export type Tag =
  | 'H1'
  | 'H2'
  | 'P'
  | 'Span'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure';

/** The structure of a tagged PDF: what is read, in which order; all else is an artifact. */
export interface Tags {
  /** Draws one piece: words, or a whole figure with its alternative text. Pieces within it are part of it. */
  leaf(tag: Tag, draw: () => void, alt?: string): void;
  /** Draws pieces that belong together. Groups with the same `within` stand in one element of that tag. */
  group(tag: Tag, draw: () => void, within?: { readonly tag: Tag; readonly key: object }): void;
  /** Draws words of another language within a piece (ISO 32000-1, 14.9.2); `null`: of the document's own. */
  foreign(lang: string | null, draw: () => void): void;
  /** Draws what is not read: rules, frames. */
  artifact(draw: () => void): void;
  /** Ends every element. Nothing may be drawn after. */
  end(): void;
}

type Doc = PDFKit.PDFDocument;
type Element = ReturnType<Doc['struct']>;

/** Begins the structure of a document that was made with `tagged`. */
export function createTags(doc: Doc): Tags {
  const root = doc.struct('Document');
  doc.addStructure(root);
  const open: Element[] = [root];
  const shared = new Map<object, Element>();
  let isInPiece = false;
  const inner = () => open[open.length - 1]!;

  /** Draws a piece by itself; within another it is part of that one. */
  function alone(begin: (draw: () => void) => void, draw: () => void): void {
    if (isInPiece) {
      draw();
      return;
    }
    isInPiece = true;
    begin(draw);
    isInPiece = false;
  }

  function added(tag: Tag, to: Element): Element {
    // Every head of a table here heads a column.
    const element = doc.struct(tag, tag === 'TH' ? { scope: 'Column' } : {});
    to.add(element);
    return element;
  }

  function sharedElement({ tag, key }: { tag: Tag; key: object }): Element {
    const known = shared.get(key) ?? added(tag, root);
    shared.set(key, known);
    return known;
  }

  return {
    leaf: (tag, draw, alt) =>
      alone((inside) => void inner().add(doc.struct(tag, alt ? { alt } : {}, inside)), draw),
    group(tag, draw, within) {
      if (isInPiece) {
        draw();
        return;
      }
      const element = added(tag, within ? sharedElement(within) : inner());
      open.push(element);
      draw();
      open.pop();
      element.end();
    },
    foreign: (lang, draw) => inLanguage(doc, lang, draw),
    artifact: (draw) =>
      alone((inside) => {
        doc.markContent('Artifact', { type: 'Layout' });
        inside();
        doc.endMarkedContent();
      }, draw),
    end() {
      for (const element of shared.values()) element.end();
      root.end();
    },
  };
}

/** Draws words of another language than the document's; null for its own. */
function inLanguage(doc: Doc, lang: string | null, draw: () => void): void {
  if (lang !== null) doc.markContent('Span', { lang });
  draw();
  if (lang !== null) doc.endMarkedContent();
}
