import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import viteConfig from '../../app/electron/vite.config.ts';
import { dependencies, dependencyLines, PURPOSES } from './dependencies.ts';

const all = dependencies();

/** The only packages under the LGPL. */
const REPLACEABLE = ['replicad-opencascadejs'];

describe('what the program depends on', () => {
  it('says of every package it names what it is for, and of no other', () => {
    expect(all.named.filter(({ purpose }) => purpose === null)).toEqual([]);
    expect(all.named.map(({ name }) => name).toSorted()).toEqual(Object.keys(PURPOSES).toSorted());
  });

  it('knows the licence of every package that goes with the program', () => {
    expect(all.shippedLicences['not said']).toBeUndefined();
    const counted = Object.values(all.shippedLicences).reduce((sum, n) => sum + n, 0);
    expect(counted).toBe(all.shippedInAll);
  });

  it('ships only what may be passed on without opening the program’s own source', () => {
    const open =
      /^(0BSD|Apache-2\.0|BSD-[23]-Clause|BlueOak-1\.0\.0|ISC|MIT|OFL-1\.1|Unlicense|\(?(WTFPL|MIT|ISC).*)$/;
    const others = Object.keys(all.shippedLicences).filter((licence) => !open.test(licence));
    expect(others).toEqual(['LGPL-2.1-only']);
    expect(all.shippedLicences['LGPL-2.1-only']).toBe(REPLACEABLE.length);
  });

  it('keeps what stands under the LGPL a package of its own outside the archive, which whoever likes may replace', () => {
    const builder = readFileSync(new URL('../../electron-builder.yml', import.meta.url), 'utf8');
    const { resolve } = viteConfig.environments!.worker!;
    for (const name of REPLACEABLE) {
      expect(all.named.find((one) => one.name === name)?.licence).toBe('LGPL-2.1-only');
      expect(builder.slice(builder.indexOf('asarUnpack:'))).toContain(`- node_modules/${name}/**`);
      expect(resolve!.external).toContain(name);
    }
  });

  it('pins every version', () => {
    expect(all.named.filter(({ version }) => !/^\d+\.\d+\.\d+(-beta\.\d+)?$/.test(version))).toEqual([]);
  });

  it('prints each with version, licence and purpose', () => {
    const zod = dependencyLines(all).find((line) => line.includes(' zod '));
    expect(zod).toMatch(/^ships {3}zod \d+\.\d+\.\d+ +MIT +schemas/);
  });
});
