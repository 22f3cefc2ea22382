import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Side } from '../../../core/frame/mirror.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { type ShowScene, showScene } from '../../../core/show/show-scene.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { exampleBoat } from '../../core/example/example-fit.ts';

/** An invented body: its name on the sheet, and what an athlete's record says of it. */
interface SheetBody {
  readonly name: string;
  readonly sex: 'female' | 'male' | 'unspecified';
  readonly statureM: number;
  readonly massKg: number;
  readonly bornOn?: string;
}

/** Twelve bodies: long and short, light and heavy, her, him and nothing said, and juniors. All invented. */
export const BODIES: readonly SheetBody[] = [
  { name: 'F 1.55 m 50 kg', sex: 'female', statureM: 1.55, massKg: 50 },
  { name: 'F 1.65 m 60 kg', sex: 'female', statureM: 1.65, massKg: 60 },
  { name: 'F 1.72 m 84 kg', sex: 'female', statureM: 1.72, massKg: 84 },
  { name: 'F 1.83 m 73 kg', sex: 'female', statureM: 1.83, massKg: 73 },
  { name: 'M 1.63 m 62 kg', sex: 'male', statureM: 1.63, massKg: 62 },
  { name: 'M 1.76 m 76 kg', sex: 'male', statureM: 1.76, massKg: 76 },
  { name: 'M 1.80 m 104 kg', sex: 'male', statureM: 1.8, massKg: 104 },
  { name: 'M 2.00 m 92 kg', sex: 'male', statureM: 2, massKg: 92 },
  { name: 'not given 1.70 m', sex: 'unspecified', statureM: 1.7, massKg: 66 },
  { name: 'F junior 1.42 m', sex: 'female', statureM: 1.42, massKg: 36, bornOn: '2014-05-01' },
  { name: 'M junior 1.50 m', sex: 'male', statureM: 1.5, massKg: 40, bornOn: '2013-05-01' },
  { name: 'M junior 1.68 m', sex: 'male', statureM: 1.68, massKg: 54, bornOn: '2011-05-01' },
];

/** The five instants of a stroke, in legs of the cycle. */
export const INSTANTS = { ready: 0, catch: 1, drive: 1.5, exit: 2, recovery: 2.5 } as const;
export type Instant = keyof typeof INSTANTS;

/** A body in its first setting in the example hull. */
export function fitOf({ name, bornOn, ...rest }: SheetBody, side: Side): Fit {
  const boat = exampleBoat();
  const athlete = athleteSchema.parse({ name, side, ...rest, ...(bornOn ? { bornOn } : {}) });
  const setting = firstSetting({ body: bodyOfAthlete(athlete), boat, stationX: 0, side });
  return fitSchema.parse({ format: 'kneelwright-fit/1', name, boat, seats: [{ ...setting, athlete }] });
}

/** The scenes of a fit at the five instants. */
export function scenesOf(fit: Fit): Record<Instant, ShowScene> {
  const report = createEvaluator().evaluate(fit);
  const crew = strokeOfFit(fit, report);
  const at = (legs: number) => showScene(fit, reportAt(fit, report, strokeRow(crew, legs)), 0)!;
  return Object.fromEntries(Object.entries(INSTANTS).map(([instant, legs]) => [instant, at(legs)])) as Record<
    Instant,
    ShowScene
  >;
}
