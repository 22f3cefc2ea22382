import { markName } from './floorboard-template.ts';
import type { AngleName, AngleRow, HeightName, HeightRow } from './heights-and-angles.ts';
import type { Mark, MarkName } from './marks.ts';
import type { SeatSetOut } from './set-out.ts';
import { figureOf, type SheetUnits, writtenLength } from './sheet-length.ts';

/** Fittings as a boatbuilder calls them. */
export const FITTING_NAMES = {
  datum: 'Seat’s mark',
  kneePad: 'Knee pad',
  rearRest: 'Rear foot rest',
  frontFoot: 'Front foot',
} as const;

const MARK_WHAT: Readonly<Record<Exclude<MarkName, 'M'>, string>> = {
  K: 'bottom of the recess, where the knee bears',
  P1: 'pad block, fore left corner',
  P2: 'pad block, fore right corner',
  P3: 'pad block, aft right corner',
  P4: 'pad block, aft left corner',
  R1: 'bearing edge of the rest, left end',
  R2: 'bearing edge of the rest, right end',
  F: 'back of the front heel',
  T: 'toe line, on the foot’s axis',
};

/** What a mark is, in words. */
export function markWhat(out: SeatSetOut, name: MarkName): string {
  return name === 'M' ? `${markName(out)} on the centreline` : MARK_WHAT[name];
}

/** Forward or aft of the seat's mark, as a tape reads: `175 aft`. */
export function alongText({ forwardMm }: Pick<Mark, 'forwardMm'>, units: SheetUnits): string {
  if (forwardMm === 0) return 'on the mark';
  return `${figureOf(Math.abs(forwardMm), units)} ${forwardMm > 0 ? 'forward' : 'aft'}`;
}

/** Left or right of the centreline, as a tape reads: `35 left`. */
export function acrossText({ portMm }: Pick<Mark, 'portMm'>, units: SheetUnits): string {
  if (portMm === 0) return 'on the line';
  return `${figureOf(Math.abs(portMm), units)} ${portMm > 0 ? 'left' : 'right'}`;
}

const HEIGHT_NAMES: Readonly<Record<HeightName, string>> = {
  padTop: 'Top of the pad block',
  recessBottom: 'Bottom of the finished recess (K), nobody on it',
  woodUnderFoam: 'Wood under the foam at K',
  restEdge: 'Bearing edge of the rest, both ends alike',
  heel: 'Under the front heel',
  toes: 'Under the front toes',
};

/** Name of a height over the floorboard. */
export function heightName(height: HeightName): string {
  return HEIGHT_NAMES[height];
}

/** How a height is proved, in words. */
export function heightCheck({ check }: HeightRow, units: SheetUnits): string {
  const length = writtenLength(Math.abs(check.lengthMm), units);
  switch (check.how) {
    case 'fromBase':
      return 'all four corners alike';
    case 'straightedge':
      return `${length} down from a straightedge laid over the block`;
    case 'foam':
      return `${length} foam brings it up to K`;
    case 'slope':
      return `${length} up the slope of the face`;
    case 'ends':
      return `${length} between heel and toes`;
  }
}

const ANGLE_NAMES: Readonly<Record<AngleName, string>> = {
  padTurn: 'Turn of pad and recess',
  restTurn: 'Turn of the rest',
  restTilt: 'Face of the rest from the floorboard',
  footTurn: 'Turn of the front foot',
  footWedge: 'Slope under the front foot',
};

/** Name of an angle. */
export function angleName(angle: AngleName): string {
  return ANGLE_NAMES[angle];
}

/** Which way an angle goes, and the same with a tape: `aft end to the right; over 200 mm, 43 mm aside`. */
export function angleText({ angle, toward, deg, overMm, byMm }: AngleRow, units: SheetUnits): string {
  const over = writtenLength(overMm, units);
  const by = writtenLength(Math.abs(byMm), units);
  if (angle === 'restTilt') return overMm === 0 ? 'upright' : `${by} up over ${over} aft`;
  if (angle === 'footWedge') {
    if (deg === 0) return 'flat';
    return `toes ${by} ${byMm > 0 ? 'up' : 'down'} over ${over}`;
  }
  if (!toward) return 'straight fore and aft';
  const end = angle === 'footTurn' ? 'toes' : 'aft end';
  return `${end} to the ${toward}; over ${over}, ${by} aside`;
}
