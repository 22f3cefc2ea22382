import { expect, it } from 'vitest';
import { bundleFacts } from '../bench/bundle.ts';

/**
 * What the scripts of the page and its worker may weigh together, gzip, KiB. The texts are told apart: a language each. The canvas
 * library and its React part are about 75 of them; they load with the first drawing. The solver of integer programmes is 30; it loads
 * when somebody asks for a plan of holes, in a worker of its own.
 */
const MOST_KIB = 560;

it(`all scripts of the page, its worker included, are at most ${MOST_KIB} KiB compressed`, () => {
  const size = bundleFacts().find(({ name }) => name === 'page script, compressed');
  expect(size?.value).toBeLessThan(MOST_KIB);
});
