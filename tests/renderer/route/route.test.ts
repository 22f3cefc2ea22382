import { describe, expect, it } from 'vitest';
import { hrefOf, type Route, routeOf } from '../../../renderer/route/route.ts';

const ROUTES: Route[] = [
  { page: 'home' },
  { page: 'fits' },
  { page: 'new-fit' },
  { page: 'fit', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'set-out', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'show', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'athletes' },
  { page: 'athlete', id: 'new' },
  { page: 'measure', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'athletes-table' },
  { page: 'boats' },
  { page: 'archive' },
  { page: 'help' },
  { page: 'boat', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
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
