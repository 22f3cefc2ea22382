import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { electronBinary } from '../../../app/launch/electron-binary.ts';
import { temporaryFolder } from '../temporary.ts';

describe("looking for Electron's program file", () => {
  it('finds it where the package or the environment says, and never fetches it', () => {
    const root = temporaryFolder();
    const electron = join(root, 'node_modules/electron');
    mkdirSync(join(electron, 'dist'), { recursive: true });
    expect(electronBinary(root, {})).toBe(null);
    writeFileSync(join(electron, 'path.txt'), 'electron');
    expect(electronBinary(root, {})).toBe(null);
    writeFileSync(join(electron, 'dist/electron'), '');
    expect(electronBinary(root, {})).toBe(join(electron, 'dist/electron'));
    const elsewhere = temporaryFolder();
    expect(electronBinary(root, { ELECTRON_OVERRIDE_DIST_PATH: elsewhere })).toBe(null);
    writeFileSync(join(elsewhere, 'electron'), '');
    expect(electronBinary(root, { ELECTRON_OVERRIDE_DIST_PATH: elsewhere })).toBe(
      join(elsewhere, 'electron'),
    );
  });
});
