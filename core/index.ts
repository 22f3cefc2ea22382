/**
 * The public face of the core: pure arithmetic on plain data, usable from a script without the program.
 * Metres, kilograms, seconds, radians and newtons inside; documents (fits) in metres, kilograms and degrees.
 */
export type { BodyEstimate, BodyNote, Estimate } from './body/body.ts';
export { bodyOfAthlete } from './body/body-of-athlete.ts';
export { estimateBody } from './body/estimate-body.ts';
export { type PredictedPerson, type PredictedTape, predictTapes } from './body/predict-tapes.ts';
export { SEGMENT_ENDPOINTS } from './body/segment-masses.ts';
export type { Athlete } from './document/athlete-schema.ts';
export { athleteSchema } from './document/athlete-schema.ts';
export type { Boat } from './document/boat-schema.ts';
export { boatSchema } from './document/boat-schema.ts';
export { checkOffsets } from './document/check-offsets.ts';
export type { Fit, FitInput } from './document/fit-schema.ts';
export { FIT_FORMAT, fitSchema } from './document/fit-schema.ts';
export type { Seat } from './document/seat-schema.ts';
export { DEFAULT_RATE_PER_MIN, STROKE_RATES } from './document/stroke-defaults.ts';
export { USUAL_CLASSES, type UsualClass } from './document/usual-classes.ts';
export type { Evaluator } from './evaluation/evaluator.ts';
export { createEvaluator, evaluateFit } from './evaluation/evaluator.ts';
export type { Band, Finding, Quantity, Severity, Suggestion, Unit } from './evaluation/finding.ts';
export { type Narrowed, narrowedBy } from './evaluation/narrowed-by.ts';
export { partsOf } from './evaluation/parts-of.ts';
export type { Report, SeatReport } from './evaluation/report.ts';
export { suggestChange } from './evaluation/suggest-change.ts';
export { suggestionsFor } from './evaluation/suggestions.ts';
export type { SeatFrame, Side } from './frame/mirror.ts';
export type { BoatPoint, PaddlerPoint } from './frame/vec3.ts';
export { grownAthlete, grownFit } from './growth/grown-athlete.ts';
export type { Hull } from './hull/hull.ts';
export { hullFromOffsets } from './hull/hull-from-offsets.ts';
export { hullFromTape } from './hull/hull-from-tape.ts';
export { hullLines } from './hull/hull-lines.ts';
export { hullOfBoat, hullOrNot } from './hull/hull-of-boat.ts';
export type { NoHull } from './hull/no-hull.ts';
export { offsetsFromTable } from './hull/offsets-from-table.ts';
export { sectionAt } from './hull/section-at.ts';
export { type FourNumbers, usualHull } from './hull/usual-hull.ts';
export { USUAL_NUMBERS } from './hull/usual-lines.ts';
export type {
  Afloat,
  Attitude,
  BalanceDemand,
  FloatResult,
  ImmersedProperties,
  PointMass,
} from './hydrostatics/afloat.ts';
export { balanceDemand } from './hydrostatics/balance-demand.ts';
export { calibrateHull } from './hydrostatics/calibrate-hull.ts';
export { curvesOfForm } from './hydrostatics/curves-of-form.ts';
export { floatAtRest } from './hydrostatics/float-at-rest.ts';
export { gzCurve } from './hydrostatics/gz-curve.ts';
export { immersedProperties } from './hydrostatics/immersed-properties.ts';
export { waterDensity } from './hydrostatics/water-density.ts';
export { firstSetting } from './optimise/first-setting.ts';
export { levelledFit } from './optimise/levelled-fit.ts';
export { measurementsFor } from './optimise/measurements.ts';
export type { Offer } from './optimise/offers.ts';
export { type Proposal, propose } from './optimise/propose.ts';
export { derivativesTo } from './optimise/sensitivity.ts';
export { type PaddleFit, paddleFit } from './paddle/paddle-fit.ts';
export { rankStock } from './paddle/rank-stock.ts';
export type { FixingHole, Part, PartName } from './parts/part.ts';
export { type Camera, type ImageSize, type Pixel, projectPoint } from './photograph/camera.ts';
export type { MarkedPoint } from './photograph/camera-problem.ts';
export { learnNeutral } from './photograph/learn-neutral.ts';
export { measuredFit } from './photograph/measured-fit.ts';
export {
  type PostureInput,
  type PostureResult,
  postureFromMarks,
  type SeenPosture,
} from './photograph/posture-from-marks.ts';
export type { SeenMoment } from './photograph/seen-moment.ts';
export { type CameraInput, type SolvedCamera, solveCamera } from './photograph/solve-camera.ts';
export { solveStance } from './posture/solve-stance.ts';
export type { Phase, Stance } from './posture/stance.ts';
export { type StrokeRow, strokeCycle, strokeRow } from './stroke/stroke-cycle.ts';
export { strokeSummary } from './stroke/stroke-summary.ts';
export { driveLoads } from './support/drive-loads.ts';
export type { DriveLoads, Support } from './support/support.ts';
export { supportLoads } from './support/support-loads.ts';
export { plainFormat } from './text/format.ts';
export {
  athleteSentence,
  bandText,
  coachSentence,
  findingTitle,
  quantityName,
} from './text/sentences.ts';
export type { Words } from './text/words.ts';
export { type BowMotion, bowMotion } from './under-way/bow-motion.ts';
export { speedAtPower, towPower } from './under-way/equal-power.ts';
export { ittcFriction, kinematicViscosity } from './under-way/friction.ts';
export { type Resistance, type Running, resistance } from './under-way/resistance.ts';
export type { Degrees, Radians } from './units/angle.ts';
export { toDegrees, toRadians } from './units/angle.ts';
