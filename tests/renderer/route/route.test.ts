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
  { page: 'paddles' },
  { page: 'paddles', id: 'new' },
  { page: 'archive' },
  { page: 'help' },
  { page: 'boat', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'hull', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'timeline', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'full-size', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'crew-sheet', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'transfer', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  { page: 'trial', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10' },
  {
    page: 'trial',
    id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10',
    trial: '0f6cf7a4-6a0e-4a3e-8d3c-0b8f5f7a2b11',
  },
  { page: 'fit', id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10', tab: 'growth' },
  {
    page: 'fit',
    id: '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10',
    tab: 'trials',
    trial: '0f6cf7a4-6a0e-4a3e-8d3c-0b8f5f7a2b11',
  },
  { page: 'paddles' },
  { page: 'paddles', id: 'new' },
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
