import { firstStore } from './0001-first-store.ts';
import { trials } from './0002-trials.ts';
import { measuringsAndPhotos } from './0003-measurings-and-photos.ts';
import { stockPaddles } from './0004-paddles.ts';
import { wordsOfPeople } from './0005-words-of-people.ts';
import { versions } from './0006-versions.ts';
import { safeguards } from './0007-safeguards.ts';
import { picturesOfAthletes } from './0008-pictures-of-athletes.ts';
import { whoKneltWhen } from './0009-who-knelt-when.ts';

/** Every migration in order; the store's version is how many have been applied. Only ever add to the end. */
export const MIGRATIONS: readonly string[] = [
  firstStore,
  trials,
  measuringsAndPhotos,
  stockPaddles,
  wordsOfPeople,
  versions,
  safeguards,
  picturesOfAthletes,
  whoKneltWhen,
];
