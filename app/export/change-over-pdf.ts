import type { Boat } from '../../core/document/boat-schema.ts';
import { pointsOf } from '../../core/graphics/shape.ts';
import type { BoardPlan } from '../../core/setout/board-plan.ts';
import { boardPlanDrawing, paddlerLayer } from '../../core/setout/board-plan-drawing.ts';
import { boundsOf } from '../../core/setout/drawing-bounds.ts';
import { type PaperName, pageOf } from '../../core/setout/paper.ts';
import { alongText } from '../../core/setout/sheet-names.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import { stampDay } from '../../core/setout/sheet-stamp.ts';
import { wholeMillimetres } from '../../core/text/sheet-length.ts';
import type { Words } from '../../core/text/words.ts';
import { LAYER_STYLES } from './layer-styles.ts';
import { fittedText } from './pdf/fitted-text.ts';
import { SHEET_INK } from './pdf/sheet-inks.ts';
import { createSheetPdf, type SheetPdf } from './pdf/sheet-pdf.ts';
import type { PrintedPdf } from './template-pdf.ts';

const MARGIN_MM = 12;
/** A row holds one paddler: read from two steps away. */
const ROW_MM = 15;
const HEAD_MM = 26;
const FOOT_MM = 8;
/** Room for the small plan of the board under the rows, millimetres. */
const PLAN_MM = 46;

/** Lines of the floorboard that the card's small plan shows: its edges, the centreline, rails. */
const ON_CARD: ReadonlySet<string> = new Set(['outline', 'centreline', 'fitting']);

/** Holes closer than this on the card leave no room for a number between them, millimetres. */
const CROWDED_MM = 6;

/** What the change-over card is made from. */
interface Card {
  readonly boat: Boat;
  readonly plan: BoardPlan;
  readonly paper: PaperName;
  readonly stamp: SheetStamp;
  readonly words: Words;
}

/**
 * The change-over card for the boathouse: each paddler's holes in one large row, with letter and colour as on the board, and a
 * small plan of the numbered holes on every page.
 */
export function* changeOverPdf(card: Card): Generator<void, PrintedPdf> {
  const { plan, paper, stamp, words } = card;
  const title = words.say('board.paper.card', { boat: stamp.boatName });
  const pdf = createSheetPdf({
    title,
    subject: title,
    keptAt: stamp.keptAt,
    lang: words.language,
  });
  const page = pageOf(paper, { landscape: true });
  const room = page.height - 2 * MARGIN_MM - HEAD_MM - PLAN_MM - FOOT_MM;
  const perPage = Math.max(1, Math.floor(room / ROW_MM));
  const pages = Math.ceil(plan.people.length / perPage);
  const onRails = plan.people.some(({ padRailsXM, restRailsXM }) => padRailsXM ?? restRailsXM);
  for (let at = 0; at < pages; at++) {
    pdf.addPage(page);
    const width = page.width - 2 * MARGIN_MM;
    drawHead(pdf, { title, width, words, onRails });
    for (const [k, person] of plan.people.slice(at * perPage, (at + 1) * perPage).entries()) {
      const top = MARGIN_MM + HEAD_MM + k * ROW_MM;
      drawRow(pdf, person, { place: at * perPage + k, top, width, words });
    }
    const under = page.height - MARGIN_MM - FOOT_MM - PLAN_MM;
    drawPlan(pdf, card, { left: MARGIN_MM, top: under, width, height: PLAN_MM });
    pdf.text(stampDay(stamp), [MARGIN_MM, page.height - MARGIN_MM], { size: 3, colour: SHEET_INK.soft });
    pdf.text(
      words.say('work-title.count', { page: at + 1, pages }),
      [MARGIN_MM + width, page.height - MARGIN_MM],
      {
        size: 3,
        anchor: 'end',
        colour: SHEET_INK.soft,
      },
    );
    yield;
  }
  return { bytes: pdf.bytes(), missing: pdf.missing };
}

/** Where the columns stand, as shares of the width. */
const COLUMNS = { name: 0.09, pad: 0.5, rest: 0.76 } as const;

function drawHead(
  pdf: SheetPdf,
  { title, width, words, onRails }: { title: string; width: number; words: Words; onRails: boolean },
): void {
  fittedText(pdf, title, { at: [MARGIN_MM, MARGIN_MM + 7], width, size: 8, weight: 'strong', tag: 'H1' });
  const how = ['board.paper.how', ...(onRails ? ['board.paper.rails' as const] : [])] as const;
  fittedText(pdf, words.sentences(how.map((key) => words.say(key))), {
    at: [MARGIN_MM, MARGIN_MM + 13.5],
    width,
    size: 3.6,
    colour: SHEET_INK.soft,
  });
  const head = (text: string, share: number) =>
    pdf.text(text, [MARGIN_MM + share * width, MARGIN_MM + HEAD_MM - 3], { size: 4, colour: SHEET_INK.soft });
  head(words.say('board.pad'), COLUMNS.pad);
  head(words.say('board.rest'), COLUMNS.rest);
  rule(pdf, MARGIN_MM + HEAD_MM, width);
}

function rule(pdf: SheetPdf, y: number, width: number): void {
  pdf.path(
    [
      [MARGIN_MM, y],
      [MARGIN_MM + width, y],
    ],
    { stroke: SHEET_INK.rule, width: 0.2 },
  );
}

function drawRow(
  pdf: SheetPdf,
  { letter, name, pad, rest, padRailsXM, restRailsXM }: BoardPlan['people'][number],
  { place, top, width, words }: { place: number; top: number; width: number; words: Words },
): void {
  const middle = top + ROW_MM / 2;
  const { ink } = LAYER_STYLES[paddlerLayer(place)];
  pdf.circle([MARGIN_MM + 6.5, middle], 5.6, { fill: ink });
  pdf.text(letter, [MARGIN_MM + 6.5, middle + 2.1], {
    size: 6,
    weight: 'strong',
    anchor: 'middle',
    colour: '#ffffff',
  });
  const left = (share: number) => MARGIN_MM + share * width;
  const at = (share: number) => [left(share), middle + 2.6] as const;
  fittedText(pdf, name, { at: at(COLUMNS.name), width: (COLUMNS.pad - COLUMNS.name) * width - 4, size: 7 });
  const column = { at: at(COLUMNS.pad), width: (COLUMNS.rest - COLUMNS.pad) * width - 4, size: 8.4 };
  fittedText(pdf, standsIn(pad, padRailsXM, words), { ...column, weight: 'strong' });
  fittedText(pdf, standsIn(rest, restRailsXM, words), { ...column, at: at(COLUMNS.rest), weight: 'strong' });
  rule(pdf, top + ROW_MM, width);
}

/** Numbers of holes, or the place on the rails from mid-length, millimetres. */
function standsIn(holes: readonly number[], railsXM: number | undefined, words: Words): string {
  if (railsXM === undefined) return holes.length === 0 ? '–' : holes.join('   ');
  const forwardMm = wholeMillimetres(railsXM);
  return words.say('board.on-rails', { at: alongText({ forwardMm }, { units: 'mm', words }) });
}

/** The board to scale with its holes by number: drilled and new alike, for on the card all are there. */
function drawPlan(
  pdf: SheetPdf,
  { boat, plan, words }: Card,
  box: { left: number; top: number; width: number; height: number },
): void {
  const { shapes } = boardPlanDrawing(boat, plan, words);
  const edges = shapes.filter((shape) => shape.kind === 'line');
  const { minX, maxX, minY, maxY } = boundsOf(edges);
  const scale = Math.min(box.width / (maxX - minX), (box.height - 4) / (maxY - minY));
  const place = ([x, y]: readonly [number, number]) =>
    [
      box.left + (box.width - (maxX - minX) * scale) / 2 + (x - minX) * scale,
      box.top + 2 + (maxY - y) * scale,
    ] as const;
  for (const edge of edges) {
    if (!ON_CARD.has(edge.role)) continue;
    const { ink, width, dash } = LAYER_STYLES[edge.role];
    for (const points of edge.lines.map(pointsOf)) {
      pdf.path(points.map(place), { stroke: ink, width: width / 2, dash });
    }
  }
  const bow = place([maxX, 0]);
  pdf.text(words.say('template.bow'), [bow[0] + 2, bow[1] + 1], { size: 3.4 });
  const port = place([minX, maxY]);
  pdf.text(words.say('template.left'), [port[0], port[1] - 1], { size: 3.4 });
  const spots = plan.holes.map(({ xM, yM, number }) => ({ number, at: place([1000 * xM, 1000 * yM]) }));
  for (const { number, at } of spots) {
    pdf.circle(at, 0.9, { fill: SHEET_INK.ink });
    // With another hole close on its right the number stands on the left.
    const crowded = spots.some(
      ({ at: [x, y] }) => x > at[0] && x - at[0] < CROWDED_MM && Math.abs(y - at[1]) < CROWDED_MM,
    );
    const beside = crowded ? -1.4 : 1.4;
    pdf.text(String(number), [at[0] + beside, at[1] + 1], {
      size: 3.4,
      weight: 'strong',
      anchor: crowded ? 'end' : 'start',
    });
  }
}
