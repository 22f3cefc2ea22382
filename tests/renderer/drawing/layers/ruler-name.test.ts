import { describe, expect, it } from 'vitest';
import { rulerName } from '../../../../renderer/drawing/layers/ground.ts';
import { say } from '../../../../renderer/language/messages.ts';

describe('a ruler', () => {
  it('is named in capitals and keeps its unit as it is written', () => {
    for (const unit of ['cm', 'mm', 'in']) {
      expect(rulerName(say('drawing.ruler.aft', { unit }), unit)).toBe(`AFT, ${unit}`);
    }
    expect(rulerName('hinten, in', 'in')).toBe('HINTEN, in');
  });
});
