import { describe, expect, it } from 'vitest';
import { PAPER_NAMES, PAPERS, pageOf } from '../../../core/setout/paper.ts';

describe('papers', () => {
  it.each(PAPER_NAMES)('%s stands with its short side level and lies with its long side level', (paper) => {
    const { short, long } = PAPERS[paper];
    expect(long).toBeGreaterThan(short);
    expect(pageOf(paper, { landscape: false })).toEqual({
      paper,
      landscape: false,
      width: short,
      height: long,
    });
    expect(pageOf(paper, { landscape: true })).toEqual({
      paper,
      landscape: true,
      width: long,
      height: short,
    });
  });
});
