import { expect, it } from 'vitest';
import { bundleFacts, loadedBy } from '../bench/bundle.ts';

/**
 * What the scripts may weigh together that stand before somebody can work at the bench, gzip, KiB: the frame, the bench, the canvas
 * library with its React part, and the worker. The texts of one language are told apart, as are the other pages, each of which
 * loads when it is opened.
 */
const MOST_KIB = 440;
/** All scripts of all pages and workers, the solver of hole plans (30 KiB) included, without texts. */
const MOST_OF_ALL_KIB = 600;

const size = (name: string) => bundleFacts().find((fact) => fact.name === name)?.value;

it(`the scripts of the bench, its worker included, are at most ${MOST_KIB} KiB (450 kB) compressed`, () => {
  expect(size('page script, compressed')).toBeLessThan(MOST_KIB);
  expect(size('page script, compressed')).toBeGreaterThan(100);
});

it(`all scripts together are at most ${MOST_OF_ALL_KIB} KiB compressed`, () => {
  expect(size('scripts of all pages and workers, compressed')).toBeLessThan(MOST_OF_ALL_KIB);
});

it('the worker loads none of the page’s own scripts: they begin with the window, which it has not', () => {
  const names = [...loadedBy(['analysis-worker']).keys()].map((name) =>
    name.replace(/-[\w-]{8}\.js$|\.js$/, ''),
  );
  expect(names).toContain('core');
  expect(names.filter((name) => ['first', 'main', 'shared', 'libraries'].includes(name))).toEqual([]);
});
