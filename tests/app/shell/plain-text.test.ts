import { describe, expect, it } from 'vitest';
import { oddText, onOneLine } from '../../../app/shell/plain-text.ts';

describe('texts that come in', () => {
  it('may be in any script, and free text may have lines', () => {
    const fit = {
      name: 'Žofie 🛶 ქართული',
      notes: 'one\nline\tand another',
      seats: [{ athlete: { name: 'A' } }],
    };
    expect(oddText(fit)).toBe(null);
    expect(oddText(null)).toBe(null);
  });

  it.each([
    [{ name: 'a\nb' }, 'name'],
    [{ seats: [{ athlete: { name: 'a\u2028b' } }] }, 'seats[0].athlete.name'],
    [{ notes: 'a\u0000b' }, 'notes'],
    [{ notes: 'a\u009bb' }, 'notes'],
    [{ reason: 'half \udc00' }, 'reason'],
    [['x', 'y\u001b'], '[1]'],
  ])('of %j are refused with their place', (value, path) => {
    expect(oddText(value)).toMatchObject({ path });
  });
});

describe('texts that go out on one line', () => {
  it('hold no control character, no line break and no half character', () => {
    expect(onOneLine('a\r\n0\u0000CIRCLE\u2028b \ud800')).toBe('a 0 CIRCLE b \ufffd');
    expect(onOneLine('Žofie 🛶')).toBe('Žofie 🛶');
  });
});
