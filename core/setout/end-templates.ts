import { bareLength, writtenLength } from '../text/sheet-length.ts';
import type { BaseSection } from './block-base.ts';
import type { BlockName } from './block-bed.ts';
import { lettersWidth } from './letter-widths.ts';
import type { SeatSetOut } from './set-out.ts';
import {
  dimension,
  inViews,
  line,
  type MillimetrePoint,
  ring,
  shifted,
  type TemplateDrawing,
  type TemplateShape,
  textAt,
} from './template-drawing.ts';

/** Gap between two ends on one drawing, millimetres. */
const GAP_MM = 40;

/** Height of the sentence inside the first end, where there is room for it, millimetres. */
const HOW_MM = 3;

/** What an end of a block is cut to: its width and its top, millimetres over the floorboard at the seat's mark. */
interface EndSizes {
  /** Half of the width. */
  readonly half: number;
  /** Height of the top. */
  readonly top: number;
}

/** The pad block's two ends with the hull's section, seen from behind; null where its base is left square. */
export function padEndsTemplate(out: SeatSetOut): TemplateDrawing | null {
  const { halfWidth: half, topHeight: top } = out.fittings.pad;
  return endsTemplate(out, {
    block: 'kneePad',
    id: 'pad-ends',
    half,
    top,
  });
}

/** The rear rest's two ends likewise. */
export function restEndsTemplate(out: SeatSetOut): TemplateDrawing | null {
  const { halfWidth: half, height: top } = out.fittings.rest;
  return endsTemplate(out, { block: 'rearRest', id: 'rest-ends', half, top });
}

/** Both ends of a block side by side as they are cut to the hull; null where nothing is cut off. */
function endsTemplate(
  out: SeatSetOut,
  given: EndSizes & { block: BlockName; id: 'pad-ends' | 'rest-ends' },
): TemplateDrawing | null {
  const { fore, aft, cutMm } = out.bases[given.block];
  if (cutMm === 0) return null;
  const { units } = out.work.options;
  const { say } = out.work.words;
  const right = 2 * given.half + GAP_MM;
  const how = say('template.ends.saw', { by: writtenLength(cutMm, units) });
  const level = (aft.bed + given.top) / 2;
  const room = given.half + rightEdge(aft, level, given.half) - 8;
  const height = Math.min(HOW_MM, room / lettersWidth(how));
  return {
    id: given.id,
    title: say(`template.${given.id}`),
    seen: say('template.ends.seen'),
    ...inViews(
      [
        ...end(say('template.end.aft'), aft, { ...given, out }),
        textAt(how, [-given.half + 4, level], { height, clear: true }),
      ],
      shifted(end(say('template.end.fore'), fore, { ...given, out }), [right, 0]),
    ),
  };
}

/** How far to the right of the axis the end's wood goes at a height, seen from behind: to the line that is sawn, or the block's side. */
function rightEdge({ base }: BaseSection, level: number, half: number): number {
  const cut = base.filter(([across, height]) => across <= 0 && height > level);
  return Math.min(half, ...cut.map(([across]) => -across));
}

/** One end: its outline with the base as it is cut, the hull's inner face, and the heights left at both sides. */
function end(
  name: string,
  { bed, base, skin }: BaseSection,
  { half, top, out }: EndSizes & { out: SeatSetOut },
): TemplateShape[] {
  const { units } = out.work.options;
  const { say } = out.work.words;
  const behind = ([across, height]: MillimetrePoint): MillimetrePoint => [-across, height];
  const [starboard, port] = [base[0]!, base.at(-1)!];
  const side = (at: MillimetrePoint, offset: number) => {
    const [x, y] = behind(at);
    return top - y < 1 ? [] : [dimension([x, y], [x, top], { offset, text: bareLength(top - y, units) })];
  };
  return [
    ring('outline', [...base.map(behind), [-half, top], [half, top]]),
    ...(skin.length > 1 ? [line('hull', ...skin.map(behind))] : []),
    line('edge', [-half - 6, bed], [half + 6, bed]),
    ...side(starboard, -10),
    ...side(port, 10),
    textAt(name, [-half + 4, top - 7], { clear: true }),
    textAt(say('template.port'), [-half, top + 2], { height: 2.5 }),
    textAt(say('template.starboard'), [half, top + 2], { height: 2.5, anchor: 'end' }),
  ];
}
