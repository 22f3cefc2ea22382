import { expect, it } from 'vitest';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { usualTopHand } from '../../core/paddle/mid-drive.ts';
import { exampleAthlete } from '../core/example/example-fit.ts';
import { english } from '../english.ts';

it('Help says what the water’s computation leaves out', () => {
  const text = english.say('help.step.under-way');
  for (const left of ['waves', 'wind', 'steering', 'squat']) expect(text).toContain(left);
});

it('Help says how high the top hand is taken and why, with the number that the median adult gets', () => {
  // Median statures of the survey's women and men (ANSUR II): 1.63 and 1.76 m.
  const heights = (
    [
      ['female', 1.63, 67],
      ['male', 1.76, 85],
    ] as const
  ).map(([sex, statureM, massKg]) =>
    usualTopHand(bodyOfAthlete(exampleAthlete({ sex, statureM, massKg })).lengths),
  );
  const mean = (heights[0]! + heights[1]!) / 2;
  expect(english.say('help.step.paddle')).toContain(
    `about ${Math.round(100 * mean)}\u{202f}cm over the shoulders`,
  );
  expect(english.say('help.step.paddle')).toMatch(/stature minus 10.cm/u);
});
