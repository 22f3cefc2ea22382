import type { Shape } from '../../core/graphics/shape.ts';
import { type PaperName, pageOf } from '../../core/setout/paper.ts';
import type { SheetBox } from '../../core/setout/sheet-layout.ts';
import { revisionText, type SheetStamp, stampDay } from '../../core/setout/sheet-stamp.ts';
import type { ShowPicture } from '../../core/show/show-picture.ts';
import type { ShowStory } from '../../core/show/show-story.ts';
import { ATHLETE_CAUTIONS } from '../language/athlete-cautions.ts';
import type { Translator } from '../language/translator.ts';
import { drawBefore, drawView } from './pdf/draw-shapes.ts';
import { fittedText } from './pdf/fitted-text.ts';
import { SHEET_INK } from './pdf/sheet-inks.ts';
import { createSheetPdf, type SheetPdf } from './pdf/sheet-pdf.ts';
import { drawPhotographs, type PrintedPhotograph } from './take-home-photographs.ts';
import type { PrintedPdf } from './template-pdf.ts';

/** A view with its caption. */
interface DrawnView {
  readonly caption: string;
  readonly picture: ShowPicture;
  readonly before: readonly Shape[] | null;
  /** What of the view is shown, metres: from its lower left. */
  readonly from: readonly [right: number, up: number];
  readonly width: number;
  readonly height: number;
}

/** What stands on a take-home page. */
export interface TakeHome {
  readonly story: ShowStory;
  /** Says what stands on the page, in the athlete's language. */
  readonly words: Translator;
  /** Why the coach moved it, in the coach's own words; may be empty. */
  readonly reason: string;
  /** What was said after the last trial and what was done about it; `open` while some of it is unanswered. */
  readonly said: { readonly lines: readonly string[]; readonly open: boolean };
  /** Body mass as it is to be written; null keeps it off the page. */
  readonly massText: string | null;
  readonly pictures: readonly DrawnView[];
  /** The stroke in five small pictures. */
  readonly stroke: readonly DrawnView[];
  /** Photographs that the coach chose to show; they have a page of their own. */
  readonly photographs: readonly PrintedPhotograph[];
}

const MARGIN_MM = 15;
const GAP_MM = 8;
const STRIP_GAP_MM = 2;
/** Sizes of body type that are tried, millimetres, largest first: it is read at arm's length. */
const SIZES = [5.2, 4.8, 4.4, 4.1, 3.8, 3.5, 3.2] as const;

/** The take-home page of an athlete: one page, large type, plain words; a second one only for photographs. */
export function* takeHomePdf(
  page: TakeHome,
  { paper, stamp }: { paper: PaperName; stamp: SheetStamp },
): Generator<void, PrintedPdf> {
  const { words } = page;
  const pdf = createSheetPdf({
    title: words.say('athlete-page.title.of', { name: stamp.athleteName }),
    subject: words.say('show.page'),
    keptAt: stamp.keptAt,
    lang: words.language,
  });
  const size = pageOf(paper, { landscape: false });
  pdf.addPage(size);
  const room: SheetBox = {
    left: MARGIN_MM,
    top: MARGIN_MM,
    width: size.width - 2 * MARGIN_MM,
    height: size.height - 2 * MARGIN_MM,
  };
  const below = drawPictures(pdf, page, { ...room, top: drawHead(pdf, page, { room, stamp }) });
  drawWords(pdf, page, { ...room, top: below, height: room.top + room.height - below });
  if (page.photographs.length > 0) {
    pdf.addPage(size);
    drawPhotographs(pdf, page.photographs, room);
  }
  yield;
  return { bytes: pdf.bytes(), missing: pdf.missing };
}

/** Name, knee, boat and day; gives where it ends. */
function drawHead(
  pdf: SheetPdf,
  { story, massText, words }: TakeHome,
  { room, stamp }: { room: SheetBox; stamp: SheetStamp },
): number {
  const { left, top, width } = room;
  pdf.text(words.say('athlete-page.title'), [left, top + 4], { size: 4, colour: SHEET_INK.soft });
  const share = width * 0.58;
  fittedText(pdf, story.athleteName, {
    at: [left, top + 13.5],
    width: share,
    size: 9,
    weight: 'strong',
    tag: 'H1',
  });
  const knee = words.say('athlete-page.kneels', { side: story.kneels });
  pdf.text([knee, massText].filter(Boolean).join('   '), [left, top + 20], { size: 4 });
  const right = left + width;
  const aside = { width: width - share - 4, anchor: 'end' } as const;
  fittedText(pdf, stamp.boatName, { ...aside, at: [right, top + 13.5], size: 4 });
  fittedText(
    pdf,
    words.say('work-title.named', { revision: revisionText(stamp, words), name: stampDay(stamp) }),
    {
      ...aside,
      at: [right, top + 20],
      size: 3.4,
      colour: SHEET_INK.soft,
    },
  );
  pdf.path(
    [
      [left, top + 23.5],
      [right, top + 23.5],
    ],
    { stroke: SHEET_INK.ink, width: 0.35 },
  );
  return top + 26;
}

/** The pictures, and the stroke in a strip under them; gives where they end. */
function drawPictures(pdf: SheetPdf, { pictures, stroke, words }: TakeHome, room: SheetBox): number {
  const end = drawRow(pdf, pictures, { room, gap: GAP_MM, size: 3.4 });
  const strip = drawRow(pdf, stroke, { room: { ...room, top: end + 2 }, gap: STRIP_GAP_MM, size: 2.8 });
  if (!pictures.some(({ before }) => before)) return strip + 3;
  pdf.text(words.say('athlete-page.lines'), [room.left, strip + 4], {
    size: 3.2,
    colour: SHEET_INK.measure,
  });
  return strip + 8;
}

/** Views side by side at one scale, captions over them; gives where they end. */
function drawRow(
  pdf: SheetPdf,
  views: readonly DrawnView[],
  { room, gap, size }: { room: SheetBox; gap: number; size: number },
): number {
  if (views.length === 0) return room.top;
  const wide = views.reduce((sum, { width }) => sum + width, 0);
  const perMetre = (room.width - gap * (views.length - 1)) / wide;
  const tall = Math.max(...views.map(({ height }) => height)) * perMetre;
  const top = room.top + 1.5 * size;
  let left = room.left;
  for (const { caption, picture, before, from, width, height } of views) {
    const box = {
      left,
      top: top + tall - height * perMetre,
      width: width * perMetre,
      height: height * perMetre,
    };
    pdf.text(caption, [left, room.top + 1.2 * size], { size, weight: 'strong', colour: SHEET_INK.soft });
    const placement = { box, from, perMetre };
    pdf.figure(caption, () => {
      drawView(pdf, picture.ground, placement);
      if (before) drawBefore(pdf, before, placement);
      drawView(pdf, picture.person, placement);
    });
    left += width * perMetre + gap;
  }
  return top + tall;
}

interface Section {
  readonly heading: string;
  readonly items: readonly { readonly text: string; readonly strong?: boolean }[];
}

/**
 * Two columns of words over the cautions, in the largest type that fits. Sections move to the shorter column before type gets
 * smaller. If none fits, the last items are left out.
 */
function drawWords(pdf: SheetPdf, page: TakeHome, room: SheetBox): void {
  const cautions: Section = {
    heading: '',
    items: ATHLETE_CAUTIONS.map((key) => ({ text: page.words.say(key) })),
  };
  const width = (room.width - GAP_MM) / 2;
  const { sections, usual } = sectionsOf(page);
  for (const [index, size] of SIZES.entries()) {
    const foot = heightOf(pdf, cautions, { size: size * 0.82, width: room.width }) + 6;
    const space = room.height - foot;
    const last = index === SIZES.length - 1;
    const heights = sections.map((section) => heightOf(pdf, section, { size, width }));
    const split = [usual, evenSplit(heights)].find((at) => tallest(heights, at) <= space);
    if (split === undefined && !last) continue;
    const more = page.words.say('athlete-page.more');
    const columns = [sections.slice(0, split ?? usual), sections.slice(split ?? usual)].map((column) =>
      trimmed(pdf, column, { size, width, space, more }),
    );
    columns.forEach((sections, k) => {
      let top = room.top;
      for (const section of sections) {
        top = drawSection(pdf, section, {
          size,
          box: { left: room.left + k * (width + GAP_MM), top, width },
        });
      }
    });
    const footTop = room.top + room.height - foot;
    pdf.path(
      [
        [room.left, footTop + 1],
        [room.left + room.width, footTop + 1],
      ],
      { stroke: SHEET_INK.rule, width: 0.2 },
    );
    drawSection(pdf, cautions, {
      size: size * 0.82,
      box: { left: room.left, top: footTop + 2, width: room.width },
    });
    return;
  }
}

/** Height of the taller column where the second begins with section `split`, millimetres. */
function tallest(heights: readonly number[], split: number): number {
  const sum = (some: readonly number[]) => some.reduce((total, height) => total + height, 0);
  return Math.max(sum(heights.slice(0, split)), sum(heights.slice(split)));
}

/** Where the second column begins so that both are as even as whole sections allow. */
function evenSplit(heights: readonly number[]): number {
  const splits = heights.map((_, at) => at + 1);
  return splits.reduce((best, at) => (tallest(heights, at) < tallest(heights, best) ? at : best), 1);
}

/**
 * What is good and what to look after, then what changes, why, and what to feel for; `usual` is where the second column
 * begins if there is room.
 */
function sectionsOf({ story, reason, said, words }: TakeHome): { sections: Section[]; usual: number } {
  const first: Section = {
    heading: words.say('athlete-page.said'),
    items: said.lines.map((text) => ({ text: shortened(text) })),
  };
  const good: Section = {
    heading: words.say('athlete-page.good'),
    items: story.good.map((text) => ({ text })),
  };
  const watch: Section = {
    heading: words.say('athlete-page.watch'),
    items: watched(story, said.open, words),
  };
  const why: Section = {
    heading: words.say('athlete-page.why'),
    items: [
      ...(reason ? [{ text: words.say('athlete-page.coach.says', { reason: shortened(reason) }) }] : []),
      ...story.reasons.map(({ before, now }) => ({
        text: words.say('athlete-page.before-now', { before, now }),
      })),
    ],
  };
  const right: Section[] = [
    { heading: words.say('athlete-page.changes'), items: story.changes.map(({ what }) => ({ text: what })) },
    why,
    { heading: words.say('athlete-page.feel'), items: story.feel.map((text) => ({ text })) },
  ].filter(({ items }) => items.length > 0);
  const begin = first.items.length > 0 ? [first] : [];
  const looked = watch.items.length > 0 ? [watch] : [];
  const sections = [...begin, good, ...looked, ...right];
  return { sections, usual: sections.length - (right.length > 0 ? right : looked).length };
}

/** What to look after. While a trial is unanswered "nothing" is never said. */
function watched({ watch, more }: ShowStory, open: boolean, words: Translator): Section['items'] {
  if (watch.length === 0) return open ? [] : [{ text: words.say('athlete-page.nothing') }];
  const sentences = watch.map(({ sentence, stop }) => ({
    text: stop ? words.say('athlete-page.stop', { sentence }) : sentence,
    strong: stop,
  }));
  return more ? [...sentences, { text: words.say('athlete-page.more') }] : sentences;
}

/** Longest reason that a page has room for, letters. */
const LONGEST_REASON = 400;

/** A long text cut after a word, with an ellipsis. */
function shortened(text: string): string {
  if (text.length <= LONGEST_REASON) return text;
  return `${text.slice(0, LONGEST_REASON).replace(/\s+\S*$/, '')} …`;
}

/** Sections cut from their ends until they have room; what was cut is said. */
function trimmed(
  pdf: SheetPdf,
  sections: readonly Section[],
  { size, width, space, more }: { size: number; width: number; space: number; more: string },
): Section[] {
  let kept = [...sections];
  const tall = () => kept.reduce((sum, section) => sum + heightOf(pdf, section, { size, width }), 0);
  while (tall() > space && kept.some(({ items }) => items.length > 1)) {
    const longest = kept.reduce((a, b) => (b.items.length >= a.items.length ? b : a));
    const items = longest.items.filter(({ text }) => text !== more).slice(0, -1);
    kept = kept.map((section) =>
      section === longest ? { ...section, items: [...items, { text: more }] } : section,
    );
    if (items.length === 0) break;
  }
  return kept;
}

const LEADING = 1.32;

function linesOf(pdf: SheetPdf, { items }: Section, { size, width }: { size: number; width: number }) {
  return items.map(({ text, strong }) => {
    const weight = strong ? ('strong' as const) : ('regular' as const);
    return { weight, lines: pdf.lines(text, width - size * 1.2, { size, weight }) };
  });
}

function heightOf(pdf: SheetPdf, section: Section, fit: { size: number; width: number }): number {
  const lines = linesOf(pdf, section, fit);
  const count = lines.reduce((sum, item) => sum + item.lines.length, 0);
  const heading = section.heading ? fit.size * 1.9 : 0;
  return heading + count * fit.size * LEADING + lines.length * fit.size * 0.3 + fit.size * 0.8;
}

/** Draws a section; gives where it ends. */
function drawSection(
  pdf: SheetPdf,
  section: Section,
  { size, box }: { size: number; box: { left: number; top: number; width: number } },
): number {
  let y = box.top;
  if (section.heading) {
    pdf.text(section.heading, [box.left, y + size * 1.2], {
      size: size * 1.12,
      weight: 'strong',
      colour: SHEET_INK.measure,
      tag: 'H2',
    });
    y += size * 1.9;
  }
  const list = { tag: 'L', key: section } as const;
  for (const { weight, lines } of linesOf(pdf, section, { size, width: box.width })) {
    pdf.circle([box.left + size * 0.32, y + size * 0.68], size * 0.13, { fill: SHEET_INK.soft });
    const drawLines = () => {
      for (const line of lines) {
        pdf.text(line, [box.left + size * 1.2, y + size], { size, weight, tag: 'Span' });
        y += size * LEADING;
      }
    };
    pdf.group('LI', () => pdf.group('LBody', drawLines), list);
    y += size * 0.3;
  }
  return y + size * 0.8;
}
