import { describe, expect, it } from 'vitest';
import { column, listBlock } from '../../../core/setout/sheet-block.ts';

describe('parts of blocks', () => {
  it('are plain unless said otherwise', () => {
    expect(column('what', 3)).toEqual({ title: 'what', share: 3, anchor: 'start', strong: false });
    expect(listBlock('Notes', ['One.'])).toEqual({
      kind: 'list',
      heading: 'Notes',
      sentences: ['One.'],
      numbered: false,
      strong: false,
    });
  });

  it('stand out or are numbered when asked', () => {
    expect(listBlock('Steps', ['One.'], { numbered: true })).toMatchObject({ numbered: true, strong: false });
    expect(column('size', 15, { anchor: 'end', strong: true })).toMatchObject({
      anchor: 'end',
      strong: true,
    });
  });
});
