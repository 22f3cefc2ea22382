import type { DrillingModel } from './drilling-model.ts';
import { HOLE_COST } from './drilling-plan.ts';

/** Terms on a line: long lines are not read by every solver. */
const TERMS = 12;

/**
 * The plan as an integer programme in the text format that mixed-integer solvers read ("LP format"): x of a standing is 1 where it
 * is taken, y of a new hole is 1 where it is drilled. Least is the count of new holes, then how far everybody is moved. One
 * standing for each wish; a standing asks for its new holes; of each crowd one hole at most.
 */
export function drillingProgramme(model: DrillingModel, crowds: readonly (readonly number[])[]): string {
  const { standings, holes } = model;
  const x = (wish: number, at: number) => `x${wish}_${at}`;
  const fresh = holes.flatMap(({ drilled }, id) => (drilled ? [] : [id]));
  const taken = standings.flatMap((ways, wish) => ways.map((_, at) => x(wish, at)));
  const cost = [
    ...fresh.map((id) => `${HOLE_COST} y${id}`),
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
  const rows = [...once, ...asked, ...crowded].map((row, k) => `r${k}: ${row}`);
  return [
    'Minimize',
    `cost: ${sum(cost)}`,
    'Subject To',
    ...rows,
    'Binary',
    ...[...fresh.map((id) => `y${id}`), ...taken],
    'End',
    '',
  ].join('\n');
}

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
