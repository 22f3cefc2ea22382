import type { Sex } from './sex.ts';

/**
 * One row of the survey for one sex: mean, standard deviation and percentiles, and the straight line
 * *value = slope × stature + intercept* with the standard deviation of what it leaves. Millimetres (mass: kilograms, with
 * the slope in kg/mm).
 */
export interface SurveyRow {
  /** Mean of all persons of that sex. */
  readonly mean: number;
  /** Standard deviation between those persons. */
  readonly sd: number;
  /** 5 in 100 persons are below this. */
  readonly p05: number;
  /** Median. */
  readonly p50: number;
  /** 5 in 100 persons are above this. */
  readonly p95: number;
  /** Change with stature, millimetres per millimetre. */
  readonly slope: number;
  /** Value of the line at stature 0: only a place on the line, not a person. */
  readonly intercept: number;
  /** Standard deviation about the line; less than `sd` by what stature explains. */
  readonly residualSd: number;
}

/**
 * Columns kept from the survey. Names with *Less* or *Plus* are differences and sums formed person by person: their
 * spread is what gives the covariance of the two (var(a − b) = var a + var b − 2 cov).
 */
export const SURVEY_MEASURES = [
  'stature',
  'mass',
  'acromialHeight',
  'cervicaleHeight',
  'trochanterionHeight',
  'crotchHeight',
  'epicondyleHeight',
  'tibialHeight',
  'kneeHeightSitting',
  'poplitealHeight',
  'malleolusHeight',
  'buttockKneeLength',
  'buttockPoplitealLength',
  'footLength',
  'ballOfFootLength',
  'sittingHeight',
  'acromionRadialeLength',
  'radialeStylionLength',
  'forearmGripLength',
  'span',
  'biacromialBreadth',
  'trochanterionLessEpicondyle',
  'epicondyleLessMalleolus',
  'acromionLessTrochanterion',
  'statureLessAcromion',
  'statureLessCervicale',
  'radialePlusStylion',
  'acromionLessRadiale',
  'statureLessEpicondyle',
  'acromionLessTibial',
  'kneeDepth',
  'kneeTopLessEpicondyle',
  'forearmGripLessStylion',
  'toeLength',
  'cervicaleLessTrochanterion',
] as const;
/** A measure that the table has. */
export type SurveyMeasure = (typeof SURVEY_MEASURES)[number];

/** One row as it is written in the table. */
type Line = readonly [
  mean: number,
  sd: number,
  p05: number,
  p50: number,
  p95: number,
  slope: number,
  intercept: number,
  residualSd: number,
];

// Source, both tables: ANSUR II, the US Army's 2012 anthropometric survey, public release (methods and definitions
// NATICK/TR-15/007 and NATICK/TR-11/017); means, percentiles and lines derived from the released persons. Adult
// soldiers of 17 to 58 years; none chosen for canoeing.

/** 4082 men. */
const MEN: Readonly<Record<SurveyMeasure, Line>> = {
  stature: [1756.21, 68.5508, 1648, 1755, 1870, 1, 0, 0],
  mass: [85.524, 14.2207, 64.4, 84.6, 110.695, 0.0972734, -85.309, 12.5619],
  acromialHeight: [1440.74, 63.2872, 1339, 1439, 1546, 0.892614, -126.885, 16.1616],
  cervicaleHeight: [1517.3, 63.2783, 1416.05, 1517, 1622.95, 0.908443, -78.1205, 11.2282],
  trochanterionHeight: [900.931, 49.1717, 824, 899, 985, 0.609757, -169.933, 25.9005],
  crotchHeight: [845.93, 46.4992, 771, 845, 925, 0.582075, -176.319, 23.8781],
  epicondyleHeight: [491.658, 26.5823, 449, 491, 537, 0.332989, -93.1427, 13.6237],
  tibialHeight: [468.207, 26.6122, 426, 467.5, 513, 0.334438, -119.138, 13.5149],
  kneeHeightSitting: [554.156, 27.9462, 509, 553, 602, 0.363269, -83.8234, 12.6845],
  poplitealHeight: [429.804, 24.8212, 390, 430, 471, 0.305636, -106.959, 13.3104],
  malleolusHeight: [72.9045, 5.66691, 64, 73, 83, 0.0386751, 4.98261, 5.0091],
  buttockKneeLength: [617.953, 30.5887, 569, 617, 669, 0.357008, -9.02918, 18.3524],
  buttockPoplitealLength: [502.925, 27.429, 459, 502, 548, 0.305085, -32.8708, 17.7493],
  footLength: [271.178, 13.1026, 250, 271, 293, 0.137252, 30.1337, 9.11996],
  ballOfFootLength: [200.935, 10.4709, 184, 201, 218, 0.101695, 22.3361, 7.81387],
  sittingHeight: [918.29, 35.6982, 860, 918, 977, 0.405699, 205.795, 22.3838],
  acromionRadialeLength: [335.244, 17.4828, 307, 335, 365, 0.202817, -20.9453, 10.6007],
  radialeStylionLength: [267.883, 15.4172, 244, 267, 295, 0.160753, -14.4341, 10.7835],
  forearmGripLength: [349.01, 18.0151, 320, 348.5, 379, 0.197249, 2.5993, 11.9057],
  span: [1814.15, 84.6323, 1680, 1812, 1956.95, 1.01623, 29.4406, 48.0648],
  biacromialBreadth: [415.676, 19.1617, 384, 415, 447, 0.148637, 154.637, 16.23],
  trochanterionLessEpicondyle: [409.273, 28.4168, 364, 408, 458, 0.276767, -76.7901, 21.1581],
  epicondyleLessMalleolus: [418.754, 24.5698, 379.05, 418, 460, 0.294314, -98.1253, 14.024],
  acromionLessTrochanterion: [539.806, 33.3991, 482.05, 541, 593, 0.282857, 43.0478, 27.1975],
  statureLessAcromion: [315.478, 17.7573, 287, 315, 345, 0.107386, 126.885, 16.1616],
  statureLessCervicale: [238.915, 12.8621, 218, 239, 260, 0.0915574, 78.1205, 11.2282],
  radialePlusStylion: [603.127, 30.5117, 555, 602, 655, 0.36357, -35.3793, 17.6035],
  acromionLessRadiale: [1105.49, 50.0954, 1025, 1104, 1190, 0.689797, -105.94, 16.5421],
  statureLessEpicondyle: [1264.56, 47.7101, 1188, 1264, 1344, 0.667011, 93.1427, 13.6237],
  acromionLessTibial: [972.53, 42.3341, 905, 972, 1042.95, 0.558176, -7.74731, 18.1153],
  kneeDepth: [115.029, 10.088, 99, 114, 132, 0.0519225, 23.8416, 9.44042],
  kneeTopLessEpicondyle: [62.4976, 9.6897, 47, 62, 79, 0.0302801, 9.31927, 9.46592],
  forearmGripLessStylion: [81.1276, 8.72882, 67, 81, 96, 0.0364957, 17.0334, 8.36363],
  cervicaleLessTrochanterion: [616.369, 31.767, 562, 617.5, 667, 0.298686, 91.8123, 24.291],
  toeLength: [70.2433, 5.2425, 62, 70, 79, 0.035557, 7.7976, 4.64197],
};

/** 1986 women. */
const WOMEN: Readonly<Record<SurveyMeasure, Line>> = {
  stature: [1628.47, 64.1995, 1525, 1626, 1740, 1, 0, 0],
  mass: [67.7582, 10.9846, 51.3, 66.8, 87.075, 0.0912782, -80.8858, 9.29334],
  acromialHeight: [1335.1, 58.0799, 1242, 1332, 1433.75, 0.879321, -96.8549, 13.6581],
  cervicaleHeight: [1395.67, 59.5237, 1300.25, 1393, 1498, 0.912558, -90.4097, 10.5278],
  trochanterionHeight: [845.351, 44.6763, 774.25, 844, 919, 0.597033, -126.901, 22.9588],
  crotchHeight: [782.317, 44.6367, 712, 780, 857, 0.590377, -179.096, 23.5831],
  epicondyleHeight: [465.937, 27.1397, 422, 465, 511, 0.337939, -84.3888, 16.3095],
  tibialHeight: [437.768, 25.0439, 399, 437, 479, 0.332456, -103.629, 13.1048],
  kneeHeightSitting: [511.287, 27.0744, 469.25, 510, 557, 0.369787, -90.9015, 13.0198],
  poplitealHeight: [388.2, 23.5869, 350, 387, 428, 0.296156, -94.0818, 13.9622],
  malleolusHeight: [62.7482, 5.1084, 54, 63, 71, 0.0348437, 6.00624, 4.59374],
  buttockKneeLength: [590.595, 32.6017, 541, 589, 646, 0.379776, -27.8602, 21.6484],
  buttockPoplitealLength: [485.12, 28.722, 441, 483, 535, 0.326747, -46.9777, 19.6243],
  footLength: [246.293, 12.4355, 226, 246, 267.75, 0.139883, 18.4976, 8.60419],
  ballOfFootLength: [182.051, 9.64192, 167, 182, 198, 0.103351, 13.7474, 6.99765],
  sittingHeight: [856.626, 33.0542, 803, 857, 912, 0.393495, 215.83, 21.3222],
  acromionRadialeLength: [311.198, 17.1647, 283.25, 311, 340, 0.211985, -34.0139, 10.4627],
  radialeStylionLength: [241.33, 15.2427, 218, 240.5, 268, 0.163222, -24.4728, 11.0723],
  forearmGripLength: [317.712, 18.0249, 290, 316, 350, 0.203333, -13.4096, 12.4327],
  span: [1660.29, 82.9722, 1529, 1657, 1802.75, 1.05859, -63.5918, 47.6118],
  biacromialBreadth: [365.349, 18.2989, 335, 365, 396, 0.161214, 102.816, 15.0945],
  trochanterionLessEpicondyle: [379.414, 24.0485, 340, 379, 418, 0.259093, -42.5124, 17.3724],
  epicondyleLessMalleolus: [403.188, 25.9101, 361, 402, 446, 0.303096, -90.3951, 17.1127],
  acromionLessTrochanterion: [489.744, 29.3401, 443, 489, 539, 0.282288, 30.0464, 23.0798],
  statureLessAcromion: [293.378, 15.6995, 268, 293, 320, 0.120679, 96.8549, 13.6581],
  statureLessCervicale: [232.806, 11.9286, 214, 232, 253, 0.0874417, 90.4097, 10.5278],
  radialePlusStylion: [552.529, 29.7735, 507, 551, 604.75, 0.375208, -58.4867, 17.5037],
  acromionLessRadiale: [1023.9, 45.2855, 951, 1022, 1100, 0.667335, -62.8409, 14.6763],
  statureLessEpicondyle: [1162.54, 45.5242, 1088.25, 1161, 1239.75, 0.662061, 84.3888, 16.3095],
  acromionLessTibial: [897.327, 38.5274, 833, 896, 962.75, 0.546864, 6.77368, 15.8709],
  kneeDepth: [105.474, 10.3799, 90, 105, 124, 0.0530293, 19.1175, 9.8082],
  kneeTopLessEpicondyle: [45.3499, 10.5497, 30, 44, 64, 0.0318474, -6.51268, 10.3523],
  forearmGripLessStylion: [76.3817, 7.86462, 64, 76, 90, 0.0401102, 11.0632, 7.43298],
  cervicaleLessTrochanterion: [550.316, 29.4302, 503, 550, 599, 0.315525, 36.4915, 21.3551],
  toeLength: [64.2417, 4.71933, 57, 64, 72, 0.0365321, 4.75022, 4.09632],
};

/** The survey's row for a measure and a sex, as published and derived: `surveyRow('stature', 'male').mean` is 1756.21. */
export function surveyRow(measure: SurveyMeasure, sex: Sex): SurveyRow {
  const [mean, sd, p05, p50, p95, slope, intercept, residualSd] = (sex === 'male' ? MEN : WOMEN)[measure];
  return { mean, sd, p05, p50, p95, slope, intercept, residualSd };
}
