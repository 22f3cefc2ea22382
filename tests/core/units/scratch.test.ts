import { describe, expect, it } from 'vitest';
import { scratch } from '../../../core/units/scratch.ts';

const room = (length: number) => ({
  fits: (spare: number[]) => spare.length === length,
  make: () => Array.from({ length }, () => 0),
});

describe('scratch room', () => {
  it('is lent again where it fits, and made anew where it does not', () => {
    const rooms = scratch<number[]>();
    const first = rooms.lend(room(3), (own) => own);
    expect(rooms.lend(room(3), (own) => own)).toBe(first);
    expect(rooms.lend(room(4), (own) => own)).not.toBe(first);
  });

  it('is never lent twice at once', () => {
    const rooms = scratch<number[]>();
    const [outer, inner] = rooms.lend(
      room(3),
      (own) => [own, rooms.lend(room(3), (other) => other)] as const,
    );
    expect(inner).not.toBe(outer);
  });

  it('is let go after an exception', () => {
    const rooms = scratch<number[]>();
    const first = rooms.lend(room(3), (own) => own);
    const fail = () => {
      throw new Error('a search that fails');
    };
    expect(() => rooms.lend(room(3), fail)).toThrow('a search that fails');
    expect(rooms.lend(room(3), (own) => own)).not.toBe(first);
  });
});
