import { bareLength, millimetres, tapeReading, writtenLength } from '../text/sheet-length.ts';
import { recessStations } from './recess-floor.ts';
import type { SeatSetOut } from './set-out.ts';
import { column, type SheetBlock } from './sheet-block.ts';

/** Column of figures. */
const FIGURE = { anchor: 'end', strong: true } as const;

/**
 * The sizes that pad and rest have when they are done, in the order they are sawn. Slope of the board, rails and foam are off
 * already. Heights are of the block itself, from its base; those of the marks over the floorboard stand in their own table.
 */
export function finishedBlock(out: SeatSetOut): SheetBlock {
  const { units, foamM } = out.work.options;
  const { say } = out.work.words;
  const { pad, rest } = out.fittings;
  const size = (mm: number) => bareLength(tapeReading(mm, units), units);
  const foam = millimetres(foamM);
  const { kneePad, rearRest } = out.bases;
  const { pad: shelfPad, rest: shelfRest } = out.work.shelf;
  const row = (
    what: string,
    sizes: readonly [long: string, wide: string],
    highs: readonly [string, string],
  ) => [what, ...sizes, ...highs];
  return {
    kind: 'table',
    heading: say('work-sheet.finished', { unit: units }),
    columns: [
      column(say('work-sheet.part'), 44),
      column(say('work-sheet.long'), 14, FIGURE),
      column(say('work-sheet.wide'), 14, FIGURE),
      column(say('work-sheet.high-fore'), 18, FIGURE),
      column(say('work-sheet.high-aft'), 18, FIGURE),
    ],
    cells: [
      row(
        shelfPad ? say('work-sheet.finished.pad.shelf', { name: shelfPad.name }) : say('work-part.pad'),
        [size(pad.foreEnd - pad.aftEnd), size(2 * pad.halfWidth)],
        [size(pad.topHeight - pad.bedFore), size(pad.topHeight - pad.bedAft)],
      ),
      row(
        say('work-sheet.finished.wood', { foam: writtenLength(foam, units) }),
        ['', ''],
        ['', size(pad.bearingHeight - foam - kneePad.middle.bed)],
      ),
      row(
        shelfRest
          ? say('work-sheet.finished.rest.shelf', { name: shelfRest.name })
          : say('work-sheet.finished.rest'),
        [size(rest.footAhead + rest.depthBehind), size(2 * rest.halfWidth)],
        ['0', size(rest.height - rest.bedAft)],
      ),
      ...cutRow(say('work-sheet.finished.cut.kneePad'), kneePad.cutMm, size),
      ...cutRow(say('work-sheet.finished.cut.rearRest'), rearRest.cutMm, size),
    ],
  };
}

/** The row of what is planed off under an end; none where the base stays square. */
function cutRow(what: string, cutMm: number, size: (mm: number) => string): string[][] {
  return cutMm > 0 ? [[what, '', '', '', size(cutMm)]] : [];
}

/** Depths of the recess below the block's top at stations along its axis, in the wood and finished; null for a pad on the shelf. */
export function recessDepthBlock(out: SeatSetOut): SheetBlock | null {
  const { units, foamM } = out.work.options;
  const { say } = out.work.words;
  if (out.work.shelf.pad) return null;
  const stations = recessStations(out.fittings.pad.recess, millimetres(foamM));
  const across = stations[0]?.depths.map((depth) => depth.across) ?? [];
  const pair = ({ finished, wood }: { finished: number; wood: number }) =>
    wood <= 0 ? '–' : `${bareLength(wood, units)} / ${bareLength(Math.max(0, finished), units)}`;
  return {
    kind: 'table',
    heading: say('work-sheet.depths', { unit: units }),
    columns: [
      column(say('work-sheet.station'), 26, { strong: true }),
      ...across.map((off) =>
        column(
          off === 0 ? say('work-sheet.on-axis') : say('work-sheet.off-axis', { by: bareLength(off, units) }),
          26,
          { anchor: 'end' },
        ),
      ),
    ],
    cells: stations.map(({ along, depths }) => [
      along === 0
        ? 'K'
        : say('work-sheet.of-knee', {
            direction: along > 0 ? 'fore' : 'aft',
            by: bareLength(Math.abs(along), units),
          }),
      ...depths.map(pair),
    ]),
  };
}
