import { type Boat, boatSchema } from '../document/boat-schema.ts';
import type { UsualClass } from '../document/usual-classes.ts';
import type { Hull } from './hull.ts';
import { hullOfBoat } from './hull-of-boat.ts';
import { innerHalfBreadth } from './inner-half-breadth.ts';
import { USUAL_NUMBERS } from './usual-lines.ts';

/** The four numbers. All but the class default to the class's. Metres, kilograms. */
export interface FourNumbers {
  /** What kind of boat it is. */
  readonly boatClass: UsualClass;
  /** Over all. */
  readonly lengthM?: number;
  /** Greatest beam, at the sheer. */
  readonly beamM?: number;
  /** Of the empty boat. */
  readonly massKg?: number;
  readonly name?: string;
}

/** Seats from mid-length as shares of the length, bow first, and the floorboard wanted: common practice, no source. */
const LAYOUTS: Readonly<Record<UsualClass, { readonly seats: readonly number[]; readonly boardM: number }>> =
  {
    C1: { seats: [0], boardM: 0.22 },
    C2: { seats: [0.115, -0.115], boardM: 0.22 },
    C4: { seats: [0.235, 0.078, -0.078, -0.235], boardM: 0.24 },
    training: { seats: [0], boardM: 0.36 },
  };

/** The board runs from the aftmost rear rest to the foremost front foot: this far beyond the end seats' marks, metres. */
const BOARD_AFT = 0.9;
/** As `BOARD_AFT`, at the fore end; metres. */
const BOARD_FORE = 0.8;

/** Room kept on either side between the board and the hull's inner face, metres. */
const BOARD_ROOM = 0.003;

/** Heights of the board's top that are tried, metres: the lowest that takes the wanted width. */
const BOARD_HEIGHTS = [0.03, 0.035, 0.04, 0.045, 0.05, 0.055, 0.06, 0.065, 0.07] as const;

/** Thickness of the hull's shell, metres (estimate). */
const SKIN = 0.004;

/** Step, metres, to which seats' places and the board's width are rounded. */
const CENTIMETRE = 0.01;

/**
 * A boat from four numbers: the usual lines of its class (`usualLines`), a level floorboard that lies within the hull over
 * its whole length, and seats spread evenly about mid-length with a single's mark amidships. The document says that its
 * hull is an estimate and carries its doubt; tape, offsets or a float check refine it (`narrowedBy`). Metres and kilograms.
 * A C1 of 5.20 × 0.42 m floats a median paddler about 10 cm deep with the bow slightly up, ± 8 mm in both.
 * @throws ZodError when a number is beyond what a boat can have.
 */
export function usualHull(numbers: FourNumbers): Boat {
  const usual = USUAL_NUMBERS[numbers.boatClass];
  const { boatClass, lengthM = usual.lengthM, beamM = usual.beamM, massKg = usual.massKg } = numbers;
  const { seats, boardM } = LAYOUTS[boatClass];
  const stations = seats.map((share) => Math.round((share * lengthM) / CENTIMETRE) * CENTIMETRE);
  const boat = {
    name: numbers.name ?? boatClass,
    boatClass: boatClass === 'training' ? 'none' : boatClass,
    massKg,
    hull: { kind: 'usual', boatClass, lengthM, beamM },
    skinM: SKIN,
    seats: stations.map((stationM) => ({ stationM: Number(stationM.toFixed(2)) })),
  };
  const ends = {
    aftEndXM: Number((Math.min(...stations) - BOARD_AFT).toFixed(2)),
    foreEndXM: Number((Math.max(...stations) + BOARD_FORE).toFixed(2)),
  };
  const bare = boatSchema.parse({ ...boat, floorboard: { heightM: 0.03, widthM: 0.1, ...ends } });
  return {
    ...bare,
    floorboard: { ...bare.floorboard, ...boardWithin(hullOfBoat(bare), bare.floorboard, boardM) },
  };
}

/** The lowest board of the wanted width that lies within the hull, or else the widest that does. Metres. */
function boardWithin(hull: Hull, board: Boat['floorboard'], wanted: number) {
  const boards = BOARD_HEIGHTS.map((heightM) => ({ heightM, widthM: widthAt(hull, { ...board, heightM }) }));
  const wide = boards.find(({ widthM }) => widthM >= wanted) ?? boards[boards.length - 1]!;
  return { heightM: wide.heightM, widthM: Math.max(0.05, Math.min(wanted, wide.widthM)) };
}

/** The widest level board with its top at a height: its lower edges touch first. Whole centimetres, 0 where none fits. */
function widthAt(hull: Hull, { aftEndXM, foreEndXM, heightM, thicknessM }: Boat['floorboard']): number {
  const steps = 40;
  let half = Number.POSITIVE_INFINITY;
  for (let k = 0; k <= steps; k++) {
    const x = aftEndXM + ((foreEndXM - aftEndXM) * k) / steps;
    half = Math.min(half, innerHalfBreadth(hull, { x, z: heightM - thicknessM }, SKIN) ?? 0);
  }
  const width = Math.max(0, 2 * (half - BOARD_ROOM));
  return Number((Math.floor(width / CENTIMETRE + 1e-9) * CENTIMETRE).toFixed(2));
}
