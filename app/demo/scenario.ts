import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { z } from 'zod';
import { athleteSchema } from '../../core/document/athlete-schema.ts';
import { type Boat, boatSchema } from '../../core/document/boat-schema.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import { label } from '../../core/document/measure-schema.ts';
import { measuringSchema } from '../../core/document/measuring-schema.ts';
import { seatSchema } from '../../core/document/seat-schema.ts';
import { stockPaddleSchema } from '../../core/document/stock-paddle-schema.ts';
import { offsetsFromTable } from '../../core/hull/offsets-from-table.ts';
import { trialSchema } from '../../core/trial/observation.ts';

const seatOfScenario = seatSchema.omit({ athlete: true }).extend({ athlete: label.nullable() });

/** A revision: settings by people's names, what was tried of it (held on the day the demo is opened), what it answers. */
const revisionOfScenario = z.strictObject({
  name: label,
  reason: z.string(),
  seats: z.array(seatOfScenario),
  trials: z.array(trialSchema.omit({ heldOn: true })).default([]),
  /** By the number of the trial among all of the fit so far, and of the observation in it, from 0. */
  answers: z.array(z.strictObject({ trial: z.int().min(0), observation: z.int().min(0) })).default([]),
});

/** The invented club as it lies in `assets/demo/scenario.json`: hulls and people by name, settings by revision. */
export const scenarioSchema = z.strictObject({
  club: label,
  athletes: z.array(athleteSchema),
  /** What some of them measured on earlier days, by name. */
  measurings: z.record(label, z.array(measuringSchema)).default({}),
  boats: z.array(boatSchema.omit({ hull: true }).extend({ hullFile: z.string().regex(/^[a-z-]+\.csv$/) })),
  paddles: z.array(stockPaddleSchema),
  fits: z.array(
    z.strictObject({
      name: label,
      boat: label,
      revisions: z.array(revisionOfScenario).min(1),
    }),
  ),
});
export type Scenario = z.infer<typeof scenarioSchema>;

/** A fit of the scenario with its revisions, oldest first, as whole fits. */
export interface DemoFit {
  readonly revisions: readonly (Omit<z.infer<typeof revisionOfScenario>, 'seats'> & { readonly fit: Fit })[];
}

/** The scenario ready to be stored. */
export interface Demo {
  readonly athletes: Scenario['athletes'];
  readonly measurings: Scenario['measurings'];
  readonly boats: readonly Boat[];
  readonly paddles: Scenario['paddles'];
  readonly fits: readonly DemoFit[];
}

/** Reads the scenario and its hulls from the folder `assets`. Throws an Error that says which file does not read. */
export function readDemo(assets: string): Demo {
  const file = join(assets, 'demo', 'scenario.json');
  const scenario = scenarioSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  const boats = scenario.boats.map(({ hullFile, ...boat }) => ({
    ...boat,
    hull: readHull(assets, hullFile),
  }));
  return {
    athletes: scenario.athletes,
    measurings: scenario.measurings,
    boats,
    paddles: scenario.paddles,
    fits: scenario.fits.map((fit) => wholeFit(scenario, boats, fit)),
  };
}

/** A sample hull of `assets/hulls` as a boat document carries it. */
export function readHull(assets: string, name: string): Boat['hull'] {
  const { data } = Papa.parse<string[]>(readFileSync(join(assets, 'hulls', name), 'utf8'), {
    skipEmptyLines: true,
  });
  const read = offsetsFromTable(data);
  if (!read.ok) throw new Error(`${name}: ${read.problems[0]?.key}`);
  return {
    kind: 'offsets',
    stations: read.stations.map(({ x, section }) => ({
      xM: x,
      section: section.map(([y, z]): [number, number] => [y, z]),
    })),
  };
}

function wholeFit(scenario: Scenario, boats: readonly Boat[], fit: Scenario['fits'][number]): DemoFit {
  const boat = named(boats, fit.boat);
  const revisions = fit.revisions.map(({ seats, ...about }) => ({
    ...about,
    fit: fitSchema.parse({
      format: FIT_FORMAT,
      name: fit.name,
      boat,
      seats: seats.map(({ athlete, ...seat }) => ({
        ...seat,
        athlete: athlete === null ? null : named(scenario.athletes, athlete),
      })),
    }),
  }));
  return { revisions };
}

function named<T extends { name: string }>(things: readonly T[], name: string): T {
  const thing = things.find((t) => t.name === name);
  if (!thing) throw new Error(`nobody and nothing is called "${name}"`);
  return thing;
}
