import type { Estimate } from './body.ts';
import { type Sex, type StatedSex, tablesOf } from './sex.ts';
import { type SurveyMeasure, surveyRow } from './survey-table.ts';

/**
 * Statures between which the survey's lines are used unchanged, metres: a little beyond its smallest and tallest persons
 * (estimate).
 */
export const SURVEYED_STATURE = { low: 1.3, high: 2.15 } as const;

/** How fast the doubt grows beyond those statures: per unit of relative distance (estimate; no survey reaches there). */
const WIDENING = 2;

/** Millimetres in a metre: the survey is in millimetres, the core in metres. */
const MM = 1000;

/**
 * A stature (metres) against the surveyed ones: the nearest surveyed stature, the scale from it to this one (1 inside the
 * range), and the factor on the doubt.
 */
export function beyondSurvey(stature: number): { nearest: number; scale: number; widening: number } {
  const nearest = Math.min(SURVEYED_STATURE.high, Math.max(SURVEYED_STATURE.low, stature));
  const scale = stature === nearest ? 1 : stature / nearest;
  return { nearest, scale, widening: 1 + WIDENING * Math.abs(scale - 1) };
}

/** One measure by one table: the regression's value and its residual standard deviation, metres. */
export interface SurveyLine {
  /** Expected value at the stature asked for, metres. */
  readonly value: number;
  /** Standard deviation about the line, metres. */
  readonly sd: number;
  /** Metres per metre of stature. */
  readonly slope: number;
}

/**
 * A survey column as predicted from stature by one table, metres. Beyond 1.30–2.15 m the proportions of the nearer end
 * are kept (a straight line would soon give legs of no length), and the spread grows.
 */
export function surveyLine(measure: SurveyMeasure, stature: number, sex: Sex): SurveyLine {
  const { slope, intercept, residualSd } = surveyRow(measure, sex);
  const { nearest, scale, widening } = beyondSurvey(stature);
  const atNearest = slope * nearest + intercept / MM;
  return {
    value: atNearest * scale,
    sd: (residualSd / MM) * scale * widening,
    slope: stature === nearest ? slope : atNearest / nearest,
  };
}

/**
 * A survey column as predicted from stature, metres, with its residual standard deviation. With the sex unspecified:
 * the mean of both tables, and the spread between the tables added to the variance. Source: ANSUR II, see
 * `survey-table.ts`. `surveyEstimate('kneeHeightSitting', 1.8, 'male')` is 0.570 ± 0.013 m.
 */
export function surveyEstimate(measure: SurveyMeasure, stature: number, sex: StatedSex): Estimate {
  const lines = tablesOf(sex).map((table) => surveyLine(measure, stature, table));
  const value = lines.reduce((sum, l) => sum + l.value, 0) / lines.length;
  const variance = lines.reduce((sum, l) => sum + l.sd ** 2 + (l.value - value) ** 2, 0) / lines.length;
  return { value, sd: Math.sqrt(variance), kind: 'survey' };
}
