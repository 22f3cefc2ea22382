import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { notEmpty } from '../not-empty.ts';

const root = join(import.meta.dirname, '../..');

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/(^|\/)(dist|probe-)/.test(name))
    .map((name) => join(folder, name));
}

describe('core', () => {
  it('has no randomness and no module state that can change', () => {
    for (const file of notEmpty(sources('core'))) {
      const text = readFileSync(join(root, file), 'utf8');
      expect(text, file).not.toMatch(/Math\.random/);
      expect(text, `${file}: a top-level let or var is module state`).not.toMatch(/^(export )?(let|var) /m);
      expect(text, `${file}: a top-level mutable collection is module state`).not.toMatch(
        /^(export )?const \w+ = new (Map|Set|WeakMap|Float64Array)\b\(\);/m,
      );
    }
  });

  it('keeps scratch room between calls in two searches only', () => {
    const keepers = notEmpty(sources('core')).filter((file) =>
      / = scratch</.test(readFileSync(join(root, file), 'utf8')),
    );
    expect(keepers.sort()).toEqual(['core/posture/minimise.ts', 'core/posture/stance-space.ts']);
  });

  it('documents every exported function and constant', () => {
    const bare: string[] = [];
    for (const file of notEmpty(sources('core'))) {
      const lines = readFileSync(join(root, file), 'utf8').split('\n');
      lines.forEach((line, i) => {
        if (/^export (async )?(function|const) /.test(line) && !/\*\/\s*$/.test(lines[i - 1] ?? '')) {
          bare.push(`${file}:${i + 1} ${line}`);
        }
      });
    }
    expect(bare).toEqual([]);
  });
});

describe('the renderer', () => {
  it('has one evaluator in the page of a bench and one in its worker', () => {
    const makers = notEmpty(sources('renderer')).filter((file) =>
      readFileSync(join(root, file), 'utf8').includes('createEvaluator'),
    );
    expect(makers.sort()).toEqual([
      'renderer/jobs/analysis-worker.ts',
      'renderer/pages/bench/open-bench.tsx',
    ]);
  });
});

describe('every source file', () => {
  it('leaves the gap between a figure and its unit to one function', () => {
    const byHand = ['core', 'app', 'renderer']
      .flatMap(sources)
      .filter((file) =>
        /\}(?:\\u\{202f\}| )(?:mm|cm|kg|kg\/m³|m|m\/s|m²|N|%)[`, )]/.test(
          readFileSync(join(root, file), 'utf8'),
        ),
      );
    expect(byHand).toEqual([]);
  });

  it('exports no name that another file exports too', () => {
    // The margin finds each tab by this name; the page says the core's sentences by their own names in its language.
    const shared = /\/tab\.tsx$|^renderer\/language\/sentences\.ts$/;
    const homes = new Map<string, string[]>();
    const files = ['core', 'app', 'renderer'].flatMap(sources).filter((file) => !shared.test(file));
    for (const file of notEmpty(files)) {
      const declared = readFileSync(join(root, file), 'utf8').matchAll(
        /^export (?:async )?(?:function\*?|const|class|interface|type) (\w+)/gm,
      );
      for (const [, name] of declared) homes.set(name!, [...(homes.get(name!) ?? []), file]);
    }
    const twice = [...homes].filter(([, [first, ...more]]) => more.some((file) => file !== first));
    expect(twice).toEqual([]);
  });

  it('stays under 400 lines', () => {
    const long = ['core', 'app', 'renderer', 'tests']
      .flatMap(sources)
      .filter((file) => readFileSync(join(root, file), 'utf8').split('\n').length > 400);
    expect(long).toEqual([]);
  });
});
