import { describe, expect, it } from 'vitest';
import type { FoundThing } from '../../../app/contract/trials.ts';
import { THING_KINDS } from '../../../app/contract/trials.ts';
import { revisionMark } from '../../../core/document/revision-mark.ts';
import { thingName, thingPlace, thingRoute } from '../../../renderer/find/found-thing.ts';
import { matchingActions } from '../../../renderer/find/matching.ts';
import { usualActions } from '../../../renderer/find/usual-actions.ts';
import { hrefOf, routeOf } from '../../../renderer/route/route.ts';

const action = (name: string) => ({ id: name, name, run: () => {} });
const names = (list: readonly { name: string }[]) => list.map(({ name }) => name);
const ID = '7b2d0c7e-4a0b-4a51-9a43-7f1c6f0a3f10';
const FIT = '0f6cf7a4-6a0e-4a3e-8d3c-0b8f5f7a2b11';

const thing = (more: Partial<FoundThing>): FoundThing => ({
  kind: 'fit',
  id: ID,
  fitId: null,
  title: 'Spring',
  number: null,
  heldOn: null,
  of: '',
  words: '',
  archived: false,
  at: '2026-05-02T10:00:00Z',
  ...more,
});

describe('actions within reach', () => {
  const actions = ['Enter a trial', 'Look at the trials', 'Go to Zoë Brâncuș', 'Save a revision'].map(action);

  it('are all there while nothing is typed, in their own order', () => {
    expect(matchingActions(actions, '  ')).toEqual(actions);
  });

  it('hold every word that was typed, accents and capitals aside', () => {
    expect(names(matchingActions(actions, 'TRIAL'))).toEqual(['Enter a trial', 'Look at the trials']);
    expect(names(matchingActions(actions, 'brancus zoe'))).toEqual(['Go to Zoë Brâncuș']);
    expect(matchingActions(actions, 'trial zoe')).toEqual([]);
  });

  it('in which the words begin words come first', () => {
    const found = matchingActions([action('Retake the measures'), action('Take it')], 'take');
    expect(names(found)).toEqual(['Take it', 'Retake the measures']);
  });

  it('that are always there have names and identifiers of their own', () => {
    expect(new Set(names(usualActions())).size).toBe(usualActions().length);
    expect(new Set(usualActions().map(({ id }) => id)).size).toBe(usualActions().length);
  });
});

describe('a thing that was found', () => {
  it.each(THING_KINDS)('of the kind %s leads to a page of its own', (kind) => {
    const route = thingRoute(thing({ kind, fitId: FIT }));
    expect(route.page).not.toBe('home');
    expect(routeOf(hrefOf(route))).toEqual(route);
  });

  it('is called by its name, a revision with its number, a trial by its day', () => {
    expect(thingName(thing({}))).toBe('Spring');
    expect(thingName(thing({ kind: 'revision', number: 3 }))).toBe(
      `Rev. 3\u{a0}·\u{a0}${revisionMark(ID)}, Spring`,
    );
    expect(thingName(thing({ kind: 'trial', title: '', heldOn: '2026-05-02' }))).toMatch(/^Trial of .*2026/);
    expect(thingPlace(thing({ of: 'Grey Heron' }))).toBe('Fit · Grey Heron');
    expect(thingPlace(thing({ kind: 'athlete' }))).toBe('Athlete');
  });
});
