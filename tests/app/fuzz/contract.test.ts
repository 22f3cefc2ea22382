import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { previewInCopy } from '../../../app/background/bundle-jobs.ts';
import {
  BUNDLE_FORMAT,
  bundleAthletes,
  bundleBoats,
  bundlePaddles,
} from '../../../app/bundle/bundle-format.ts';
import { type CallName, contract } from '../../../app/contract/contract.ts';
import { callErrorSchema } from '../../../app/contract/result.ts';
import { createLoopbackShell, type LoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { OpenedProgram } from '../../../app/services/open-program.ts';
import type { Program } from '../../../app/services/program.ts';
import { createFit } from '../../../app/store/fits.ts';
import { incomingFit } from '../../../app/store/incoming.ts';
import { damageOf } from '../../../app/store/integrity.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { cases } from '../../cases.ts';
import { bundleOf } from '../exchange.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';
import { arbitraryOf, disturbed } from './arbitrary-of.ts';

const SEED = Number(process.env.FUZZ_SEED ?? 20260302);
const CALLS = cases(300, 8000);
const BUNDLES = cases(50, 2000);
/** Calls that write a whole file each time: one for ten of every other. */
const SELDOM: ReadonlySet<string> = new Set([
  'backups.take',
  'athletes.import',
  'bundle.export',
  'program.quit',
]);

let opened: Extract<OpenedProgram, { kind: 'open' }>;
let program: Program;
let shell: LoopbackShell;
let soundBundle: Uint8Array;
beforeAll(() => {
  console.log(`fuzz seed ${SEED}`);
  shell = createLoopbackShell(() => {});
  const open = openedProgram(temporaryFolder(), { shell });
  opened = open;
  program = open.program;
  const { store } = program;
  for (let i = 0; i < 3; i++) {
    const { athlete } = athletes.save(store, inventedAthlete(`Athlete ${i}`));
    boats.save(store, inventedBoat(`Boat ${i}`));
    const { id } = createFit(store, inventedFit({ athlete }));
    saveRevision(store, { fitId: id, fit: inventedFit({ athlete }), name: `Revision ${i}`, reason: '' });
  }
  soundBundle = bundleOf(store);
});
afterAll(() => {
  console.log('refused:', Object.fromEntries(refusals));
  opened.close();
});

/** Identifiers of what is in the store just now, so that calls find something. */
function identifiers(): string[] {
  const ids = program.store.db.prepare(
    'SELECT id FROM fits UNION ALL SELECT id FROM revisions UNION ALL SELECT id FROM athletes UNION ALL SELECT id FROM boats UNION ALL SELECT id FROM paddles',
  );
  return ids.pluck().all() as string[];
}

/** Counts, sizes and newest instants of everything that a person made: differs after any write, whole or partial. */
function fingerprint(): string {
  return JSON.stringify(
    program.store.db
      .prepare(
        `SELECT (SELECT count(*) || total(length(athlete)) || max(changed_at) || count(archived_at) FROM athletes),
           (SELECT count(*) || total(length(boat)) || max(changed_at) || count(archived_at) FROM boats),
           (SELECT count(*) || total(length(paddle)) || max(changed_at) || count(archived_at) FROM paddles),
           (SELECT count(*) || total(length(search)) || max(changed_at) || count(archived_at) FROM fits),
           (SELECT count(*) || total(length(fit)) || max(saved_at) FROM revisions),
           (SELECT count(*) || total(length(fit)) || max(saved_at) FROM drafts),
           (SELECT count(*) FROM erasing)`,
      )
      .get(),
  );
}

/** How many refusals of each kind there were; printed at the end. */
const refusals = new Map<string, number>();

/** A result is a value that the contract promises, or a refusal with its reason that changed nothing. */
async function expectProper(name: string, input: unknown): Promise<boolean> {
  const before = fingerprint();
  const result = await dispatch(program, name, input);
  expect(program.store.db.inTransaction).toBe(false);
  if (result.ok) {
    contract[name as CallName].output.parse(result.value);
    return true;
  }
  const { code, message, problems } = callErrorSchema.parse(result.error);
  refusals.set(code, (refusals.get(code) ?? 0) + 1);
  expect(code, message).not.toBe('internal');
  expect(message).toMatch(/^[\p{Lu}\p{Lo}„“«¿¡][^\n]*[.:。：]$/u);
  if (code === 'bad-input') expect(problems.length).toBeGreaterThan(0);
  for (const problem of problems) expect(problem.message).toMatch(/^[^\n]{3,}$/);
  expect(fingerprint()).toBe(before);
  return false;
}

/** Whether a file is read as a bundle; if not, it must be refused with its reason. */
function isRead(path: string): boolean {
  const { file, folder } = program.store;
  const order = { file, copy: join(folder, 'copy.part'), path, at: 0 };
  const read = previewInCopy(order, { progress() {}, goOn() {} });
  if (read.kind === 'refused') expect(read.message).toMatch(/^[^\n]{3,}$/);
  return read.kind === 'read';
}

describe('the contract under any input', () => {
  it(`answers ${CALLS} calls properly: values, or refusals with their reason and no trace`, async () => {
    const names = (Object.keys(contract) as CallName[]).flatMap((name) =>
      Array.from({ length: SELDOM.has(name) ? 1 : 10 }, () => name),
    );
    let taken = 0;
    const calls = fc.constantFrom(...names).chain((name) => {
      const near = arbitraryOf(contract[name].input, identifiers);
      return fc.record({ name: fc.constant(name), input: fc.oneof(near, disturbed(near)) });
    });
    await fc.assert(
      fc.asyncProperty(calls, async ({ name, input }) => {
        if (await expectProper(name, input)) taken += 1;
      }),
      { numRuns: CALLS, seed: SEED, endOnFailure: true },
    );
    expect(taken).toBeGreaterThan(CALLS / 10);
    expect(CALLS - taken).toBeGreaterThan(CALLS / 10);
    expect(damageOf(program.store.db, 'whole')).toBe(null);
    expect(({} as Record<string, unknown>).polluted).toBe(undefined);
  });

  it('refuses names that it does not know, whatever they are', async () => {
    await fc.assert(
      fc.asyncProperty(fc.anything(), fc.anything(), async (name, input) => {
        const result = await dispatch(program, name, input);
        expect(result).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
      }),
      { numRuns: 500, seed: SEED },
    );
  });
});

describe('import files of any kind', () => {
  const contentsOf = (files: Record<string, string>) =>
    JSON.stringify({
      format: BUNDLE_FORMAT,
      program: 'fuzz',
      madeAt: '2026-01-01T00:00:00.000Z',
      files: Object.entries(files).map(([name, text]) => ({
        name,
        bytes: strToU8(text).length,
        sha256: createHash('sha256').update(strToU8(text)).digest('hex'),
      })),
    });
  const zipped = (files: Record<string, string>) =>
    zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])), {
      level: 1,
    });
  const text = (value: unknown) => JSON.stringify(value) ?? 'null';

  it(`are read or refused with their reason, ${BUNDLES} of them`, async () => {
    const document = (schema: Parameters<typeof arbitraryOf>[0]) => {
      const near = arbitraryOf(schema, identifiers);
      return fc.oneof(near, disturbed(near)).map(text);
    };
    const made = fc
      .record({
        'athletes.json': document(bundleAthletes),
        'boats.json': document(bundleBoats),
        'paddles.json': document(bundlePaddles),
        [`fits/${crypto.randomUUID()}.json`]: document(incomingFit),
      })
      .chain((files) =>
        fc
          .oneof(
            fc.constant(contentsOf(files)),
            disturbed(fc.constant(JSON.parse(contentsOf(files)))).map(text),
          )
          .map((listed) => zipped({ ...files, 'bundle.json': listed })),
      );
    const torn = fc
      .array(fc.tuple(fc.nat(), fc.nat({ max: 255 })), { minLength: 1, maxLength: 4 })
      .chain((turns) => fc.record({ turns: fc.constant(turns), cut: fc.option(fc.nat()) }))
      .map(({ turns, cut }) => {
        const bytes = Uint8Array.from(soundBundle);
        for (const [at, by] of turns) bytes[at % bytes.length] = by;
        return cut === null ? bytes : bytes.subarray(0, cut % bytes.length);
      });
    const noise = fc.uint8Array({ maxLength: 400 });
    let read = 0;
    let round = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.oneof({ weight: 6, arbitrary: made }, { weight: 3, arbitrary: torn }, noise),
        async (bytes) => {
          const before = fingerprint();
          const path = join(program.store.folder, 'bundle.part');
          writeFileSync(path, bytes);
          // A thread for each would take most of the time; one for some shows that they come to the same.
          round += 1;
          if (round % 25 === 0) await expectProper('bundle.preview', { upload: shell.accept(path) });
          else if (isRead(path)) read += 1;
          expect(fingerprint()).toBe(before);
        },
      ),
      { numRuns: BUNDLES, seed: SEED, endOnFailure: true },
    );
    expect(read).toBeGreaterThan(BUNDLES / 50);
  });
});
