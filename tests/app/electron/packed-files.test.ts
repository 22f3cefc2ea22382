import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import viteConfig from '../../../app/electron/vite.config.ts';
import { LEFT_OUT } from '../../bench/dependencies.ts';
import { notEmpty } from '../../not-empty.ts';

const ROOT = join(import.meta.dirname, '../../..');
const CONFIG = readFileSync(join(ROOT, 'electron-builder.yml'), 'utf8');

/** The entries of one list at the top level of the file. */
function list(name: string): string[] {
  const [, block] = new RegExp(`^${name}:\\n((?:  .*\\n)+)`, 'm').exec(CONFIG) ?? [];
  return [...(block ?? '').matchAll(/^ {2}- "?([^"\n]+)"?$/gm)].map(([, entry]) => entry!);
}

/** The packages that are left out, line by line. */
const leftOut = () =>
  list('files').flatMap((one) => {
    const names = /^!node_modules\/\{([^}]+)\}/.exec(one)?.[1];
    return names ? [names.split(',')] : [];
  });

describe('the files that go into the installers', () => {
  it('hold every script that the build makes, the worker among them, in the one folder in which they look for each other', () => {
    const environments = viteConfig.environments!;
    expect(Object.keys(environments)).toContain('worker');
    for (const { build } of Object.values(environments)) {
      const { outDir, rolldownOptions } = build!;
      const names = rolldownOptions!.output as { entryFileNames: string; chunkFileNames: string };
      expect(outDir).toBe('app/dist/electron');
      const ending = names.entryFileNames.split('.').at(-1);
      expect(list('files')).toContain(`app/dist/electron/*.${ending}`);
      // What a script loads later lies there too, in no folder of its own.
      expect(names.chunkFileNames).toBe('[name]-[hash].js');
    }
    // The job starter looks beside its own script, which after the build is the program's.
    const { entryFileNames } = environments.worker!.build!.rolldownOptions!.output as {
      entryFileNames: string;
    };
    expect(viteConfig.define).toEqual({ BUILT_WORKER: JSON.stringify(entryFileNames) });
  });

  it('are there: no entry names what is gone', () => {
    for (const entry of notEmpty(
      list('files').filter((one) => !one.includes('dist') && !one.startsWith('!')),
    ))
      expect(globSync(entry, { cwd: ROOT }), entry).not.toEqual([]);
    // Left out are packages that are installed, or the line is a dead name.
    for (const name of leftOut().flat())
      expect(existsSync(join(ROOT, 'node_modules', name)), name).toBe(true);
    for (const entry of list('asarUnpack'))
      expect(existsSync(join(ROOT, entry.replace('/**', ''))), entry).toBe(true);
  });

  it('leave out what only the command line of a package asks for, which nothing here imports', () => {
    expect(leftOut()).toContainEqual(LEFT_OUT);
    // The one package that asks for them is taken by its main file, and that imports none of them.
    const main = readFileSync(join(ROOT, 'node_modules/manifold-3d/manifold.js'), 'utf8');
    expect(main.match(/\bimport\s*\(?\s*["'][^"']+["']/g)).toEqual(['import("node:module"']);
  });

  it('have every package that the scripts do not carry within them', () => {
    const { devDependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    const { resolve } = viteConfig.environments!.worker!;
    for (const name of notEmpty(resolve!.external as string[])) {
      if (name === 'electron') continue;
      // A package for development only is left out of the installers.
      expect(Object.keys(devDependencies)).not.toContain(name);
      expect(existsSync(join(ROOT, 'node_modules', name)), name).toBe(true);
    }
  });

  it('are made for Intel and ARM on each system, and say honestly that they are not signed', () => {
    expect(CONFIG.match(/arch: \[x64, arm64\]/g)).toHaveLength(4);
    expect(CONFIG).toMatch(/They are not signed/);
    expect(CONFIG).not.toMatch(/certificateFile|certificatePassword/);
  });
});
