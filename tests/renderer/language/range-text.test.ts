import { describe, expect, it } from 'vitest';
import { plainFormat } from '../../../core/text/format.ts';
import { rangeText } from '../../../renderer/language/range-text.ts';

describe('a range in words', () => {
  it('writes its unit once', () => {
    expect(rangeText({ range: { least: 0.55, most: 0.712 }, unit: '1' }, plainFormat)).toBe('55–71 %');
    expect(rangeText({ range: { least: 180.2, most: 243 }, unit: 'N' }, plainFormat)).toBe('180–243 N');
  });

  it('is one value where both ends read the same', () => {
    expect(rangeText({ range: { least: 0, most: 0 }, unit: '1' }, plainFormat)).toBe('0 %');
  });
});
