import { describe, expect, it } from 'vitest';
import { readSettings } from '../../../renderer/display/display-settings.ts';

const DEFAULTS = { theme: 'system', length: 'cm', mass: 'kg', decimal: 'system' };

describe('display settings', () => {
  it('begin with what a coach in centimetres and kilograms expects', () => {
    expect(readSettings(null)).toEqual(DEFAULTS);
  });

  it('are read back as they were stored', () => {
    const chosen = { theme: 'dark', length: 'in', mass: 'lb', decimal: 'comma' };
    expect(readSettings(JSON.stringify(chosen))).toEqual(chosen);
  });

  it.each(['{', 'null', '[]', '"dark"', '{"theme":"pink","length":12}'])(
    'survive a store that holds %s',
    (text) => {
      expect(readSettings(text)).toEqual(DEFAULTS);
    },
  );
});
