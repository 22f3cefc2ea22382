import { describe, expect, it } from 'vitest';
import { fileName } from '../../../app/export/file-name.ts';

describe('a file name', () => {
  it.each([
    [['Set-out sheet', 'Žofie Łuczak'], 'pdf', 'Set-out sheet, Žofie Łuczak.pdf'],
    [['a/b\\c:d*e?f"g<h>i|j'], 'svg', 'a-b-c-d-e-f-g-h-i-j.svg'],
    [['..', 'hidden'], 'pdf', ', hidden.pdf'],
    [['line\nbreak\tand\u202Eturn'], 'pdf', 'line-break-and-turn.pdf'],
    [['CON'], 'pdf', 'sheet CON.pdf'],
    [['   '], 'dxf', 'sheet.dxf'],
    [['ends with a dot.'], 'zip', 'ends with a dot.zip'],
  ])('of %j is plain', (words, ending, wanted) => {
    expect(fileName(words, ending)).toBe(wanted);
  });

  it('is cut to what every file system takes, never inside a letter', () => {
    const name = fileName(['😀'.repeat(400)], 'pdf');
    expect(name.length).toBeLessThan(120);
    expect(name).toMatch(/^(😀)+\.pdf$/u);
  });

  it('brings accents into one letter, so that two computers find the same file', () => {
    expect(fileName(['Zofie\u0301'], 'pdf')).toBe('Zofi\u00E9.pdf');
  });
});
