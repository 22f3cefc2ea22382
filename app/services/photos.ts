import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallError, CallResult } from '../contract/result.ts';
import { addPhoto, openPhoto, type PhotoRefusal } from '../store/photos.ts';
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

/** Adds a photograph to a boat. */
export function keepPhoto(
  { store }: Program,
  { boatId, caption, data }: ParsedInput<'photos.add'>,
): CallResult<CallOutput<'photos.add'>> {
  const kept = addPhoto(store, { boatId, caption, bytes: Buffer.from(data, 'base64') });
  if (kept === 'no-boat') return missing('boat');
  if (typeof kept !== 'string') return done(kept);
  const sentence = SENTENCES[`photo-${kept}`];
  const problem = { path: 'data', message: 'not a picture; allowed are JPEG, PNG and WebP' };
  return refused(REFUSALS[kept], sentence, kept === 'no-picture' ? [problem] : []);
}
