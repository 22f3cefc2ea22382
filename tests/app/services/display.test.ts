import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DISPLAY_DEFAULTS, type DisplayRecord } from '../../../app/contract/display.ts';
import { keepDisplay, readDisplayFile } from '../../../app/services/display.ts';
import { temporaryStore } from '../temporary.ts';

const CHOSEN: DisplayRecord = {
  theme: 'dark',
  language: 'hu',
  length: 'in',
  mass: 'lb',
  decimal: 'comma',
  screens: [{ screen: '1440 × 900 at 2', pixelsPerMm: 4.331 }],
};

describe('how things are shown', () => {
  it('begins with what a coach in centimetres and kilograms expects', () => {
    expect(readDisplayFile({ store: temporaryStore() })).toEqual(DISPLAY_DEFAULTS);
  });

  it('is read back as it was kept, from a file that anybody can read', () => {
    const store = temporaryStore();
    keepDisplay({ store }, CHOSEN);
    expect(readDisplayFile({ store })).toEqual(CHOSEN);
    expect(JSON.parse(readFileSync(join(store.folder, 'display.json'), 'utf8'))).toEqual(CHOSEN);
  });

  it.each([
    '{',
    'null',
    '[]',
    '"dark"',
    '{"theme":"pink","length":12,"screens":[{"screen":"","pixelsPerMm":0}]}',
  ])('begins anew where the file holds %s', (text) => {
    const store = temporaryStore();
    writeFileSync(join(store.folder, 'display.json'), text);
    expect(readDisplayFile({ store })).toEqual(DISPLAY_DEFAULTS);
  });

  it('keeps the choices that still read beside one that does not', () => {
    const store = temporaryStore();
    writeFileSync(join(store.folder, 'display.json'), '{"theme":"dark","length":"furlong"}');
    expect(readDisplayFile({ store })).toEqual({ ...DISPLAY_DEFAULTS, theme: 'dark' });
  });
});
