import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { stepOfKey } from '../../../../renderer/ui/fields/measure-kinds.ts';
import { type EntryRule, readEntry, stepEntry } from '../../../../renderer/ui/fields/read-entry.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const pad: EntryRule = { kind: 'length', min: 0, max: 0.4, mayBeEmpty: false, format };
const plain = (read: ReturnType<typeof readEntry>) =>
  read.kind === 'refused' ? read.why.replaceAll('\u{202f}', ' ') : read;

describe('an entry', () => {
  it.each(['17.5', '17,5', '175 mm', ' 17.5 cm '])('understands %s', (text) => {
    expect(readEntry(text, pad)).toEqual({ kind: 'value', value: 0.175 });
  });

  it('understands 6 7/8 in to the micrometre', () => {
    expect(readEntry('6 7/8 in', pad)).toEqual({ kind: 'value', value: 0.174625 });
  });

  it('explains what is out of range, and what is allowed', () => {
    expect(plain(readEntry('99', pad))).toBe('99.0 cm is too large; at most 40.0 cm.');
    expect(plain(readEntry('-1', pad))).toBe('−1.0 cm is too small; at least 0.0 cm.');
  });

  it('explains what it does not understand', () => {
    expect(plain(readEntry('a hand', pad))).toContain('“a hand” is not a number');
    expect(plain(readEntry('4 ells', pad))).toContain('“ells” is no unit');
    expect(plain(readEntry('1.2.3', pad))).toContain('which mark is the decimal one?');
    expect(plain(readEntry('', pad))).toBe('A number is needed.');
  });

  it('repeats only the beginning of a pasted page, in whole letters', () => {
    for (const text of [
      'x'.repeat(100_000),
      '😀'.repeat(50_000),
      `1 ${'y'.repeat(100_000)}`,
      '9'.repeat(300),
    ]) {
      const told = plain(readEntry(text, pad)) as string;
      expect(told.length).toBeLessThan(150);
      expect(told.isWellFormed()).toBe(true);
    }
    expect(plain(readEntry('x'.repeat(31), pad))).toContain(`“${'x'.repeat(30)} …” is not a number`);
  });

  it('may be emptied where that is allowed', () => {
    expect(readEntry('  ', { ...pad, mayBeEmpty: true })).toEqual({ kind: 'emptied' });
  });

  it('takes masses and angles in their own units', () => {
    const mass: EntryRule = { ...pad, kind: 'mass', min: 15, max: 250 };
    expect(readEntry('160 lb', mass)).toEqual({ kind: 'value', value: 72.574779 });
    expect(readEntry('12,5°', { ...pad, kind: 'angle', min: -60, max: 60 })).toEqual({
      kind: 'value',
      value: 12.5,
    });
  });
});

describe('arrow keys', () => {
  const press = (key: string, more: Partial<Parameters<typeof stepOfKey>[1]> = {}) =>
    stepOfKey('length', { key, shiftKey: false, ctrlKey: false, metaKey: false, ...more });

  it('move 1 mm, with Shift 10 mm, with Ctrl 0.1 mm', () => {
    expect(press('ArrowUp')).toBeCloseTo(0.001, 12);
    expect(press('ArrowDown', { shiftKey: true })).toBeCloseTo(-0.01, 12);
    expect(press('ArrowUp', { ctrlKey: true })).toBeCloseTo(0.0001, 12);
    expect(press('a')).toBe(0);
  });

  it('leave no binary dust behind', () => {
    let value = 0.1;
    for (let i = 0; i < 100; i++) {
      const read = stepEntry(value, 0.001, pad);
      if (read.kind === 'value') value = read.value;
    }
    expect(value).toBe(0.2);
  });

  it('stop at a limit, and say so only when it was already reached', () => {
    expect(stepEntry(0.3995, 0.001, pad)).toEqual({ kind: 'value', value: 0.4 });
    expect(stepEntry(0.4, 0.001, pad).kind).toBe('refused');
  });
});
