import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  conflictsOf,
  decidedState,
  editedState,
  highestCounter,
  mergeStates,
  newState,
  type RecordState,
  sameLeaves,
} from '../../../app/changes/record-state.ts';
import type { Write } from '../../../app/changes/register.ts';

const PATHS = ['massKg', 'statureM', 'limits/trunkForward', 'tape/armSpan'];

/** An edit as an onlooker notes it who sees everything: what it wrote, and which edits its writer knew of. */
interface Noted {
  readonly path: string;
  readonly value: string | null;
  readonly knew: ReadonlySet<Noted>;
}

/** A laptop, and beside it what the onlooker knows that it knows. The two share nothing but the script. */
interface Laptop {
  readonly name: string;
  counter: number;
  state: RecordState;
  knows: Set<Noted>;
}

type Step =
  | { readonly do: 'edit'; at: number; path: string; value: string | null; clock: number }
  | { readonly do: 'meet'; at: number; from: number }
  | { readonly do: 'decide'; at: number; pick: number; clock: number };

const steps = fc.array(
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.record({
        do: fc.constant('edit' as const),
        at: fc.nat(),
        path: fc.constantFrom(...PATHS),
        value: fc.oneof(fc.nat(9).map(String), fc.constant(null)),
        clock: fc.integer({ min: -1e12, max: 1e12 }),
      }),
    },
    { weight: 4, arbitrary: fc.record({ do: fc.constant('meet' as const), at: fc.nat(), from: fc.nat() }) },
    {
      weight: 1,
      arbitrary: fc.record({
        do: fc.constant('decide' as const),
        at: fc.nat(),
        pick: fc.nat(),
        clock: fc.integer(),
      }),
    },
  ),
  { maxLength: 60 },
);

function writeOf(laptop: Laptop, clock: number): Write {
  laptop.counter += 1;
  return { store: laptop.name, counter: laptop.counter, at: `wall ${clock}` };
}

function meet(into: Laptop, from: Laptop): void {
  into.state = mergeStates(into.state, from.state);
  into.counter = Math.max(into.counter, highestCounter(from.state));
  into.knows = new Set([...into.knows, ...from.knows]);
}

function follow(laptops: readonly Laptop[], step: Step): void {
  const laptop = laptops[step.at % laptops.length]!;
  if (step.do === 'meet') {
    meet(laptop, laptops[step.from % laptops.length]!);
    return;
  }
  const write = writeOf(laptop, step.clock);
  if (step.do === 'edit') {
    const before = laptop.state.leaves.get(step.path) ?? null;
    if (before === step.value) return;
    const leaves = new Map(laptop.state.leaves);
    if (step.value === null) leaves.delete(step.path);
    else leaves.set(step.path, step.value);
    laptop.state = editedState(laptop.state, leaves, { write });
    // Whoever edits has seen the value that stands: it replaces the edits that wrote that value, and what they replaced.
    const others = conflictsOf(laptop.state).flatMap(({ path, values }) =>
      path === step.path ? values.slice() : [],
    );
    const waiting = new Set(others.map(({ value }) => value));
    const knew = [...laptop.knows].filter(
      (edit) =>
        edit.path === step.path &&
        !(edit.value !== before && waiting.has(edit.value) && isNewest(edit, laptop.knows)),
    );
    laptop.knows.add({ path: step.path, value: step.value, knew: new Set(knew) });
    return;
  }
  const open = conflictsOf(laptop.state);
  if (open.length === 0) return;
  const { path, values } = open[step.pick % open.length]!;
  const { value } = values[step.pick % values.length]!;
  laptop.state = decidedState(laptop.state, { path, value }, write);
  laptop.knows.add({ path, value, knew: new Set([...laptop.knows].filter((edit) => edit.path === path)) });
}

function isNewest(edit: Noted, among: ReadonlySet<Noted>): boolean {
  return ![...among].some((other) => other.knew.has(edit));
}

function started(count: number): Laptop[] {
  const first: Write = { store: 'first', counter: 1, at: 'wall 0' };
  const state = newState(new Map([['massKg', '61']]), first);
  return Array.from({ length: count }, (_, i) => ({
    name: `laptop ${i}`,
    counter: 1,
    state,
    knows: new Set(),
  }));
}

/** Everybody meets everybody until nothing is new. */
function meetAll(laptops: readonly Laptop[]): void {
  for (let round = 0; round < 2; round++)
    for (const into of laptops) for (const from of laptops) meet(into, from);
}

describe('any number of laptops, any order of meetings, any clocks', () => {
  it('end with the same content, and with every edit that no later one replaced: as it stands, or shown as a conflict', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 6 }), steps, (count, script) => {
        const laptops = started(count);
        for (const step of script) follow(laptops, step);
        meetAll(laptops);
        const [one, ...rest] = laptops;
        for (const other of rest) {
          expect(sameLeaves(other.state.leaves, one!.state.leaves)).toBe(true);
          expect(conflictsOf(other.state)).toEqual(conflictsOf(one!.state));
        }
        const shown = conflictsOf(one!.state);
        for (const edit of one!.knows) {
          if (!isNewest(edit, one!.knows)) continue;
          const stands = one!.state.leaves.get(edit.path) ?? null;
          const asked = shown.find(({ path }) => path === edit.path)?.values.map(({ value }) => value) ?? [];
          expect([stands, ...asked], edit.path).toContain(edit.value);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('know the same whether they meet once or often, in this order or another', () => {
    fc.assert(
      fc.property(steps, (script) => {
        const [a, b, c] = started(3) as [Laptop, Laptop, Laptop];
        for (const step of script) follow([a, b, c], step);
        const { state: s } = a;
        const merged = mergeStates(mergeStates(s, b.state), c.state);
        const otherwise = mergeStates(c.state, mergeStates(b.state, mergeStates(s, b.state)));
        expect(sameLeaves(merged.leaves, otherwise.leaves)).toBe(true);
        expect(conflictsOf(merged)).toEqual(conflictsOf(otherwise));
      }),
      { numRuns: 500 },
    );
  });

  it('never ask where one edit knew of the other', () => {
    const [a, b] = started(2) as [Laptop, Laptop];
    follow([a], { do: 'edit', at: 0, path: 'limits/trunkForward', value: '20', clock: 1e9 });
    meet(b, a);
    follow([b], { do: 'edit', at: 0, path: 'massKg', value: '50', clock: -1e9 });
    meet(a, b);
    follow([a], { do: 'edit', at: 0, path: 'massKg', value: '61', clock: -2e9 });
    meet(b, a);
    expect(conflictsOf(b.state)).toEqual([]);
    expect(Object.fromEntries(b.state.leaves)).toEqual({ massKg: '61', 'limits/trunkForward': '20' });
  });
});
