import { expect, it } from 'vitest';
import { type SolidShape, stepFile } from '../../../../app/export/solids/step.ts';

/** The head as the modeller writes it: its own name and the clock's time, broken over lines. */
const WRITTEN = `ISO-10303-21;
HEADER;
FILE_NAME('Open CASCADE Shape Model','2026-11-26T07:27:41',('Author'),(
    'Open CASCADE'),'Open CASCADE STEP processor 8.0','Open CASCADE 8.0'
  ,'Unknown');
`;

it('a STEP file carries its part’s name and its revision’s day, in the letters of ISO 10303-21', async () => {
  const shape: SolidShape = { blobSTEP: () => new Blob([WRITTEN]) };
  const text = await stepFile(shape, "Žofie's pad", new Date('2026-05-04T12:00:00Z'));
  expect(text).toContain(String.raw`FILE_NAME('\X2\017D\X0\ofie''s pad','2026-05-04T12:00:00',`);
  expect(text).not.toContain('07:27:41');
});
