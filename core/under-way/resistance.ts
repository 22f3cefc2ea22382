import type { Hull } from '../hull/hull.ts';
import type { Attitude, ImmersedProperties } from '../hydrostatics/afloat.ts';
import { immersedProperties } from '../hydrostatics/immersed-properties.ts';
import type { Radians } from '../units/angle.ts';
import { ittcFriction } from './friction.ts';
import { type GridSize, immersedGrid } from './immersed-grid.ts';
import { waveResistance } from './wave-resistance.ts';

/** How the hull lies and what it runs through. SI; trim in radians, positive bow up. */
export interface Running {
  /** Attitude as `Afloat` gives it. */
  readonly draft: number;
  readonly trim: Radians;
  /** Positive starboard down; 0 unless given. It counts for wetted surface only: waves are those of the hull upright, as deep in volume. */
  readonly heel?: Radians;
  /** Speed through still water, m/s. */
  readonly speed: number;
  /** kg/m³. */
  readonly waterDensity: number;
  /** m²/s: `kinematicViscosity` gives it. */
  readonly kinematicViscosity: number;
  /** Depth of the water, metres; deep unless given. */
  readonly depth?: number;
  /** Drag area of crew and hull in still air, m² (drag coefficient × frontal area); one kneeling paddler's unless given. */
  readonly airDragArea?: number;
  /** How finely the hull is read for its waves. */
  readonly grid?: GridSize;
}

/** Newtons. `sd` is the standard deviation of the total: of the formulas, not of the hull's own shape. */
export interface Resistance {
  /** Newtons each. */
  readonly friction: number;
  /** Of the waves that the hull makes. */
  readonly wave: number;
  /** Of the air on boat and crew. */
  readonly air: number;
  /** Sum of the three. */
  readonly total: number;
  /** One standard deviation of the total. */
  readonly sd: number;
  /** Square metres. */
  readonly wettedSurface: number;
}

/** Form factor k of a slender hull, friction × (1 + k): our estimate (rough). Hulls of length over beam above 10 lie near 0–0.1. */
export const FORM_FACTOR = { value: 0.05, sd: 0.04 };
/** Doubt of the wave integral for a hull as slender as these, as a share: our estimate. Thin-ship theory has no viscosity. */
export const WAVE_DOUBT = 0.15;
/** Drag area of a kneeling paddler with boat, m², and its doubt: our estimate from a frontal area of about 0.45 m². */
export const AIR_DRAG_AREA = { value: 0.4, sd: 0.12 };
/** Density of air at 15 °C and sea level, kg/m³ (ISO 2533 standard atmosphere). */
export const AIR_DENSITY = 1.225;

/** Waves are told to this share of friction, where that is less sharp than their own tolerance; the rule’s own error stays a tenth of it. */
const NEGLIGIBLE = 3e-4;

/** As fine as the figures settle within their doubt. */
const GRID: GridSize = { stations: 81, depths: 21 };

/**
 * Steady resistance of a hull at one attitude and speed, still deep or shallow water, still air:
 * friction ½ρU²S·(1 + k)·C_F (ITTC 1957), waves by Michell's integral, air ½ρ_a U²·(drag area).
 * Left out: wind, waves, steering, squat, the blade. Compare settings with it; it promises no time.
 * @throws RangeError for a speed that is negative or not finite, a depth that is not above 0, or an attitude that is not finite.
 */
export function resistance(hull: Hull, running: Running): Resistance {
  return towed(hull, running)(running.speed);
}

/** Newton steps that are enough for a draft to a micrometre. */
const DRAFT_STEPS = 3;

/** The hull at the same trim and volume without heel: a heeled hull's own draft would be another displacement upright. */
function upright(hull: Hull, attitude: Attitude, immersed: ImmersedProperties) {
  let floating = { attitude, immersed };
  if (attitude.heel === 0 || !(immersed.volume > 0)) return floating;
  let { draft } = attitude;
  for (let step = 0; step <= DRAFT_STEPS; step++) {
    const straight = { ...attitude, draft, heel: 0 };
    floating = { attitude: straight, immersed: immersedProperties(hull, straight) };
    draft += (immersed.volume - floating.immersed.volume) / floating.immersed.waterplane.area;
  }
  return floating;
}

/** Resistance by speed (m/s) of a hull that lies as it does: its immersed part is read once for all speeds. Errors as `resistance`. */
export function towed(hull: Hull, running: Omit<Running, 'speed'>): (speed: number) => Resistance {
  const { waterDensity, kinematicViscosity, depth } = running;
  if (depth !== undefined && !(depth > 0)) throw new RangeError('depth must be above 0, metres');
  const attitude = { draft: running.draft, trim: running.trim, heel: running.heel ?? 0 };
  const immersed = immersedProperties(hull, attitude);
  const { wettedSurface, volume, waterplane } = immersed;
  const grid = immersedGrid(hull, { ...upright(hull, attitude, immersed), size: running.grid ?? GRID });
  const airArea = running.airDragArea ?? AIR_DRAG_AREA.value;
  return (speed) => {
    if (!(speed >= 0 && Number.isFinite(speed)))
      throw new RangeError('speed must be 0 or more, metres per second');
    const pressure = 0.5 * waterDensity * speed ** 2;
    const plate = pressure * wettedSurface * ittcFriction((speed * waterplane.length) / kinematicViscosity);
    const friction = plate * (1 + FORM_FACTOR.value);
    const wave =
      volume > 0
        ? waveResistance(grid, { speed, waterDensity, depth, negligible: NEGLIGIBLE * friction })
        : 0;
    const air = 0.5 * AIR_DENSITY * speed ** 2 * airArea;
    const sd = Math.hypot(
      plate * FORM_FACTOR.sd,
      wave * WAVE_DOUBT,
      air * (AIR_DRAG_AREA.sd / AIR_DRAG_AREA.value),
    );
    return { friction, wave, air, total: friction + wave + air, sd, wettedSurface };
  };
}
