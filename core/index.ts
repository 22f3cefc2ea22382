/**
 * The public face of the core: pure arithmetic on plain data, usable from a script without the program.
 * Metres, kilograms, seconds, radians and newtons inside; documents (fits) in metres, kilograms and degrees.
 */
export type { BodyEstimate, BodyNote, Estimate } from './body/body.ts';
export { bodyOfAthlete } from './body/body-of-athlete.ts';
export { estimateBody } from './body/estimate-body.ts';
export { type PredictedPerson, type PredictedTape, predictTapes } from './body/predict-tapes.ts';
export { SEGMENT_ENDPOINTS } from './body/segment-masses.ts';
export type { Band, Finding, Quantity, Severity, Suggestion, Unit } from './findings/finding.ts';
export {
  athleteSentence,
  bandText,
  coachSentence,
  findingTitle,
  plainFormat,
  quantityName,
} from './findings/sentences.ts';
export { suggestChange } from './findings/suggest-change.ts';
export { suggestionsFor } from './findings/suggestions.ts';
export type { Athlete } from './fit/athlete-schema.ts';
export { athleteSchema } from './fit/athlete-schema.ts';
export type { Boat } from './fit/boat-schema.ts';
export { boatSchema } from './fit/boat-schema.ts';
export type { Evaluator } from './fit/evaluator.ts';
export { createEvaluator, evaluateFit } from './fit/evaluator.ts';
export type { Fit, FitInput } from './fit/fit-schema.ts';
export { FIT_FORMAT, fitSchema } from './fit/fit-schema.ts';
export { partsOf } from './fit/parts-of.ts';
export type { Report, SeatReport } from './fit/report.ts';
export type { Seat } from './fit/seat-schema.ts';
export { type FourNumbers, usualHull } from './fit/usual-hull.ts';
export type {
  Afloat,
  Attitude,
  BalanceDemand,
  FloatResult,
  ImmersedProperties,
  PointMass,
} from './float/afloat.ts';
export { balanceDemand } from './float/balance-demand.ts';
export { calibrateHull } from './float/calibrate-hull.ts';
export { curvesOfForm } from './float/curves-of-form.ts';
export { floatAtRest } from './float/float-at-rest.ts';
export { gzCurve } from './float/gz-curve.ts';
export { immersedProperties } from './float/immersed-properties.ts';
export { waterDensity } from './float/water-density.ts';
export type { SeatFrame, Side } from './frame/mirror.ts';
export type { BoatPoint, PaddlerPoint } from './frame/vec3.ts';
export { grownAthlete, grownFit } from './growth/grown-athlete.ts';
export { checkOffsets } from './hull/check-offsets.ts';
export type { Hull } from './hull/hull.ts';
export { hullFromOffsets } from './hull/hull-from-offsets.ts';
export { hullFromTape } from './hull/hull-from-tape.ts';
export { hullLines } from './hull/hull-lines.ts';
export { hullOfBoat } from './hull/hull-of-boat.ts';
export { type Narrowed, narrowedBy } from './hull/narrowed-by.ts';
export { offsetsFromTable } from './hull/offsets-from-table.ts';
export { sectionAt } from './hull/section-at.ts';
export { USUAL_CLASSES, USUAL_NUMBERS, type UsualClass } from './hull/usual-lines.ts';
export { type PaddleFit, paddleFit } from './paddle/paddle-fit.ts';
export { rankStock } from './paddle/rank-stock.ts';
export type { FixingHole, Part, PartName } from './parts/part.ts';
export { firstSetting } from './proposal/first-setting.ts';
export { measurementsFor } from './proposal/measurements.ts';
export { type Proposal, propose } from './proposal/propose.ts';
export { derivativesTo } from './proposal/sensitivity.ts';
export { solveStance } from './stance/solve-stance.ts';
export type { Phase, Stance } from './stance/stance.ts';
export { type PitchResponse, pitchResponse } from './stroke/pitch-response.ts';
export { type StrokeRow, strokeCycle, strokeRow } from './stroke/stroke-cycle.ts';
export { DEFAULT_RATE_PER_MIN, STROKE_RATES } from './stroke/stroke-defaults.ts';
export { strokeSummary } from './stroke/stroke-summary.ts';
export { driveLoads } from './support/drive-loads.ts';
export type { DriveLoads, Support } from './support/support.ts';
export { supportLoads } from './support/support-loads.ts';
export type { Degrees, Radians } from './units/angle.ts';
export { toDegrees, toRadians } from './units/angle.ts';
