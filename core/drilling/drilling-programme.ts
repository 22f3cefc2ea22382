import type { DrillingModel } from './drilling-model.ts';
import { plateOf, weightsOf } from './drilling-plan.ts';

/** Terms on a line: not every solver reads long lines. */
const TERMS = 12;

/**
 * The plan as an integer programme in the text format that mixed-integer solvers read ("LP format"): x of a standing is 1 where
 * it is taken, y of a new hole is 1 where it is drilled, z of a set of holes is 1 where a base plate stands on it. It minimises
 * the count of new holes, then of plates, then the sum of moves. One standing for each wish; a standing asks for its new holes
 * and for its plate; of each crowd one hole at most.
 */
export function drillingProgramme(model: DrillingModel, crowds: readonly (readonly number[])[]): string {
  const { standings, holes } = model;
  const x = (wish: number, at: number) => `x${wish}_${at}`;
  const fresh = holes.flatMap(({ drilled }, id) => (drilled ? [] : [id]));
  const taken = standings.flatMap((ways, wish) => ways.map((_, at) => x(wish, at)));
  const weights = weightsOf(model);
  const plates = platesOf(model);
  const cost = [
    ...fresh.map((id) => `${weights.hole} y${id}`),
    ...plates.map((_, plate) => `${weights.plate} z${plate}`),
    ...standings.flatMap((ways, wish) =>
      ways.map(({ movedMm }, at) => `${movedMm.toFixed(6)} ${x(wish, at)}`),
    ),
  ];
  const once = standings.flatMap((ways, wish) =>
    ways.length === 0 ? [] : [`${sum(ways.map((_, at) => x(wish, at)))} = 1`],
  );
  const asked = standings.flatMap((ways, wish) => {
    const users = new Map<number, string[]>();
    for (const [at, { holes: used }] of ways.entries()) {
      for (const id of used) {
        if (holes[id]!.drilled) continue;
        users.set(id, [...(users.get(id) ?? []), x(wish, at)]);
      }
    }
    return [...users].map(([id, names]) => `${sum(names)} - y${id} <= 0`);
  });
  const crowded = crowds.map((ids) => `${sum(ids.map((id) => `y${id}`))} <= 1`);
  const fixed = plates.flatMap((users, plate) => users.map((names) => `${sum(names)} - z${plate} <= 0`));
  const rows = [...once, ...asked, ...fixed, ...crowded].map((row, k) => `r${k}: ${row}`);
  return [
    'Minimize',
    `cost: ${sum(cost)}`,
    'Subject To',
    ...rows,
    'Binary',
    ...[...fresh.map((id) => `y${id}`), ...plates.map((_, plate) => `z${plate}`), ...taken],
    'End',
    '',
  ].join('\n');
}

/** For each set of holes, and each wish that may stand on it, the columns of those standings. */
function platesOf({ standings }: DrillingModel): string[][][] {
  const users = new Map<string, Map<number, string[]>>();
  for (const [wish, ways] of standings.entries()) {
    for (const [at, standing] of ways.entries()) {
      // A fitting on rails needs no base plate.
      if (standing.holes.length === 0) continue;
      const key = plateOf(standing);
      const ofPlate = users.get(key) ?? new Map<number, string[]>();
      ofPlate.set(wish, [...(ofPlate.get(wish) ?? []), `x${wish}_${at}`]);
      users.set(key, ofPlate);
    }
  }
  return [...users.values()].map((ofPlate) => [...ofPlate.values()]);
}

/** Terms added up, broken into lines that a solver reads. */
function sum(terms: readonly string[]): string {
  return terms.map((term, k) => (k > 0 && k % TERMS === 0 ? `\n ${term}` : term)).join(' + ');
}

/** The standings that a solution takes, by its columns' values; null for a wish without one. */
export function chosenOf(model: DrillingModel, value: (column: string) => number): (number | null)[] {
  return model.standings.map((ways, wish) => {
    const at = ways.findIndex((_, k) => value(`x${wish}_${k}`) > 0.5);
    return at < 0 ? null : at;
  });
}
