import { describe, expect, it } from 'vitest';
import { matchingActions } from '../../../renderer/find/matching.ts';
import { usualActions } from '../../../renderer/find/usual-actions.ts';

describe('the finder knows what things are called', () => {
  it.each([
    ['photo', 'boats'],
    ['delete', 'athletes'],
    ['delete', 'archive'],
    ['csv', 'athletes-table'],
    ['excel', 'athletes-table'],
    ['dark', 'paper-dark'],
    ['knee hurts', 'hurts'],
    ['restore', 'archive'],
  ])('%s leads to %s', (text, id) => {
    expect(matchingActions(usualActions(), text).map((action) => action.id)).toContain(id);
  });

  it('what is called so comes before what is only looked for by it', () => {
    expect(matchingActions(usualActions(), 'athletes')[0]!.id).toMatch(/^athletes/);
  });
});
