import { describe, expect, it } from 'vitest';
import { fitSchema } from '../../../../core/document/fit-schema.ts';
import { copyName, fitName, nameInBoat } from '../../../../renderer/pages/new-fit/fit-name.ts';

describe('a fit’s name', () => {
  it('is its athletes and its boat', () => {
    expect(fitName('No. 4', ['Ilse', 'Runa'])).toBe('Ilse and Runa in No. 4');
    expect(fitName('No. 4', [])).toBe('No. 4');
    expect(fitName('No. 4', ['Ilse', 'Runa', 'Maja'])).toBe('Ilse, Runa and Maja in No. 4');
    const long = 'Maximiliane Wolkenstein-Hohenfriedberg';
    expect(fitName('No. 4', [long, 'Ilse Ravn', 'Runa Vadstrand'])).toBe(`${long} and 2 more in No. 4`);
  });

  it('grows no tail when it goes from boat to boat', () => {
    const first = nameInBoat(fitName('No. 4', ['Ilse']), { from: 'No. 4', to: 'No. 7' });
    expect(first).toBe('Ilse in No. 7');
    expect(nameInBoat(first, { from: 'No. 7', to: 'No. 9' })).toBe('Ilse in No. 9');
    expect(nameInBoat('Spring', { from: 'No. 4', to: 'No. 7' })).toBe('Spring, in No. 7');
    expect(nameInBoat('Spring, in No. 7', { from: 'No. 7', to: 'No. 9' })).toBe('Spring, in No. 9');
  });

  it('of a copy is counted, and the copy of a copy gets no second tail', () => {
    expect(copyName('Spring', ['Spring'])).toBe('Spring (2)');
    expect(copyName('Spring (2)', ['Spring', 'Spring (2)'])).toBe('Spring (3)');
    expect(copyName('Spring (3)', ['Spring (3)'])).toBe('Spring (2)');
    expect(copyName('C2 (old) boat', [])).toBe('C2 (old) boat (2)');
    expect(fitSchema.shape.name.safeParse(copyName('x'.repeat(120), [])).success).toBe(true);
  });
});
