import { describe, expect, it } from 'vitest';
import { PAPER_NAMES, PAPERS, pageOf } from '../../../core/setout/paper.ts';

describe('papers', () => {
  it.each(PAPER_NAMES)('%s stands with its short side level and lies with its long side level', (paper) => {
    const { short, long } = PAPERS[paper];
    expect(long).toBeGreaterThan(short);
    expect(pageOf(paper, { lying: false })).toEqual({ paper, lying: false, width: short, height: long });
    expect(pageOf(paper, { lying: true })).toEqual({ paper, lying: true, width: long, height: short });
  });
});
