import { blank, type MutableVec3 } from '../frame/vec3-in-place.ts';
import { scratch } from '../units/scratch.ts';
import type { HipGradient } from './angles.ts';
import { blankFigure, type FigureParts, type MutableFigure, refit } from './figure.ts';
import { blankCentreSlope, type CentreSlope } from './figure-masses.ts';
import { blankFigureSlopes, type FigureSlopes } from './figure-slopes.ts';
import { STANCE_UNKNOWNS } from './stance.ts';
import { MEASURES } from './stance-terms.ts';

/** What both hip angles are measured between: trunk, line of the hips, thigh from hip to knee. */
export interface MutableHipWays {
  /** Unit vector from the hips to the shoulders. */
  readonly up: MutableVec3;
  /** Unit vector from the kneeling to the front hip. */
  readonly across: MutableVec3;
  /** From hip to knee, any length. */
  readonly thigh: MutableVec3;
}

/** Everything that a stance's search overwrites from one trial to the next. */
export interface StanceSpace {
  readonly figure: MutableFigure;
  readonly slopes: FigureSlopes;
  readonly centre: CentreSlope;
  readonly kneeling: MutableHipWays;
  readonly front: MutableHipWays;
  readonly kneelingGradient: HipGradient;
  readonly frontGradient: HipGradient;
  /** Values by `MEASURES`. */
  readonly measures: Float64Array;
  /** Per radian: unknown by unknown, in the order of `MEASURES`. The first measures are the unknowns, their slopes 1 and 0. */
  readonly measureSlopes: Float64Array;
  /** By `MEASURES`, of the terms that count where the figure stands: Σ 1/tolerance². */
  readonly weights: Float64Array;
  /** The same for Σ residual/tolerance. */
  readonly pulls: Float64Array;
}

/** Room for the search of one problem. */
export function stanceSpace(parts: FigureParts): StanceSpace {
  const figure = blankFigure(parts);
  const { up } = figure.trunk;
  const { across } = figure;
  const gradient = () => ({ up: blank(), across: blank(), thigh: blank() });
  return {
    figure,
    slopes: blankFigureSlopes(figure),
    centre: blankCentreSlope(),
    kneeling: { up, across, thigh: blank() },
    front: { up, across, thigh: blank() },
    kneelingGradient: gradient(),
    frontGradient: gradient(),
    measures: new Float64Array(MEASURES.length),
    measureSlopes: ownSlopes(),
    weights: new Float64Array(MEASURES.length),
    pulls: new Float64Array(MEASURES.length),
  };
}

/** Slopes of the measures with those of the unknowns themselves written in: they never change. */
function ownSlopes(): Float64Array {
  const slopes = new Float64Array(STANCE_UNKNOWNS.length * MEASURES.length);
  for (let k = 0; k < STANCE_UNKNOWNS.length; k++) slopes[k * MEASURES.length + k] = 1;
  return slopes;
}

const spaces = scratch<StanceSpace>();

/** Lends the memory of the last search to the next one while `use` runs. The result of `use` must not refer to it. */
export function inStanceSpace<Result>(parts: FigureParts, use: (space: StanceSpace) => Result): Result {
  return spaces.lend({ fits: () => true, make: () => stanceSpace(parts) }, (space) => {
    refit(space.figure, parts);
    return use(space);
  });
}
