import { describe, expect, it } from 'vitest';
import { hrefOf, type Route, routeOf } from '../../../renderer/route/route.ts';

const ID = '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10';
const TRIAL = '0f6cf7a4-6a0e-4a3e-8d3c-0b8f5f7a2b11';
const ROUTES: Route[] = [
  { page: 'home' },
  { page: 'fits' },
  { page: 'new-fit' },
  { page: 'fit', id: ID },
  { page: 'set-out', id: ID },
  { page: 'show', id: ID },
  { page: 'athletes' },
  { page: 'athlete', id: 'new' },
  { page: 'measure', id: ID },
  { page: 'athletes-table' },
  { page: 'boats' },
  { page: 'paddles' },
  { page: 'paddles', id: 'new' },
  { page: 'archive' },
  { page: 'help' },
  { page: 'boat', id: ID },
  { page: 'hull', id: ID },
  { page: 'timeline', id: ID },
  { page: 'full-size', id: ID },
  { page: 'crew-sheet', id: ID },
  { page: 'transfer', id: ID },
  { page: 'trial', id: ID },
  {
    page: 'trial',
    id: ID,
    trial: TRIAL,
  },
  { page: 'fit', id: ID, tab: 'growth' },
  {
    page: 'fit',
    id: ID,
    tab: 'trials',
    trial: TRIAL,
  },
];

describe('routes', () => {
  it.each(ROUTES)('$page is found again by its address', (route) => {
    expect(routeOf(hrefOf(route))).toEqual(route);
  });

  it.each(['', '#', '#/', '#/elsewhere', '#/fits/a/b', '#/fits/a/show/b', '#/fits//show', '#content'])(
    '%s leads home',
    (hash) => {
      expect(routeOf(hash)).toEqual({ page: 'home' });
    },
  );
});
