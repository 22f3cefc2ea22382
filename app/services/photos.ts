import { missingConsents } from '../../core/document/consent.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallError, CallResult } from '../contract/result.ts';
import { say } from '../shell/say.ts';
import { addPhoto, openPhoto, type PhotoRefusal } from '../store/photos.ts';
import { athletes } from '../store/roster.ts';
import { now } from '../store/store.ts';
import { done, missing, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

/** A photograph's picture as text. */
export function showPhoto(
  { store }: Program,
  { id }: ParsedInput<'photos.open'>,
): CallResult<CallOutput<'photos.open'>> {
  const photo = openPhoto(store, id);
  return photo ? done({ mime: photo.mime, data: photo.bytes.toString('base64') }) : missing('photograph');
}

const REFUSALS: Readonly<Record<Exclude<PhotoRefusal, 'no-boat'>, CallError['code']>> = {
  'no-picture': 'bad-input',
  'too-large': 'too-large',
  'too-many': 'not-allowed',
  'store-full': 'not-allowed',
};

/** Adds a photograph of a boat, or of an athlete in it where that is consented to. */
export function keepPhoto(
  { store }: Program,
  { data, ...photo }: ParsedInput<'photos.add'>,
): CallResult<CallOutput<'photos.add'>> {
  const { athleteId } = photo;
  if (athleteId) {
    const entry = athletes.get(store, athleteId);
    if (!entry) return missing('athlete');
    if (missingConsents(entry.athlete, ['photographs'], now(store).slice(0, 10)).length > 0)
      return refused('not-allowed', SENTENCES['photo-no-consent']);
  }
  const kept = addPhoto(store, { ...photo, bytes: Buffer.from(data, 'base64') });
  if (kept === 'no-boat') return missing('boat');
  if (typeof kept !== 'string') return done(kept);
  if (kept === 'too-many' && athleteId) return refused('not-allowed', SENTENCES['photo-too-many-of-athlete']);
  const sentence = SENTENCES[`photo-${kept}`];
  const problem = { path: 'data', message: say('input.photo') };
  return refused(REFUSALS[kept], sentence, kept === 'no-picture' ? [problem] : []);
}
