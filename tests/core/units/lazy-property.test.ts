import { describe, expect, it, vi } from 'vitest';
import { lazyProperty } from '../../../core/units/lazy-property.ts';

describe('a lazy property', () => {
  const withArea = lazyProperty<'area', number>('area');

  it('is made when it is first read, once, for each object its own', () => {
    const make = vi.fn(() => 6);
    const [a, b] = [withArea({ side: 2 }, make), withArea({ side: 3 }, () => 9)];
    expect(make).not.toHaveBeenCalled();
    expect([a.area, a.area, b.area]).toEqual([6, 6, 9]);
    expect(make).toHaveBeenCalledTimes(1);
  });

  it('is read like any other by spreading, comparing, cloning and JSON', () => {
    const of = () => withArea({ side: 2 }, () => 4);
    expect({ ...of() }).toEqual({ side: 2, area: 4 });
    expect(of()).toEqual({ side: 2, area: 4 });
    expect(of()).not.toEqual({ side: 2, area: 5 });
    expect(structuredClone(of())).toEqual({ side: 2, area: 4 });
    expect(JSON.stringify(of())).toBe('{"side":2,"area":4}');
  });
});
