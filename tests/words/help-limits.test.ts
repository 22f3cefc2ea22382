import { expect, it } from 'vitest';
import { english } from '../english.ts';

it('Help says what the water’s computation leaves out', () => {
  const text = english.say('help.step.under-way');
  for (const left of ['waves', 'wind', 'steering', 'squat']) expect(text).toContain(left);
});
