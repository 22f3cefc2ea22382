import { say } from '../../language/messages.ts';
import { smallPicture } from '../../ui/small-picture.ts';

/** Files of this kind are known and cannot be read here: said plainly, with what to do. */
const HEIC = /\.(heic|heif)$/i;

/**
 * A chosen picture, turned as it was taken and without what a telephone writes into it, as Base64 JPEG; or why not, in words.
 */
export async function uprightPicture(file: File): Promise<{ data: string } | { problem: string }> {
  if (HEIC.test(file.name) || /hei[cf]/.test(file.type))
    return { problem: say('photograph.heic', { file: file.name }) };
  return smallPicture(file);
}

/** The frame that a video shows now, as a picture file. */
export function frameOf(video: HTMLVideoElement): Promise<File | null> {
  const canvas = document.createElement('canvas');
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  canvas.getContext('2d')?.drawImage(video, 0, 0);
  return new Promise((resolve) =>
    canvas.toBlob(
      (blob) => resolve(blob && new File([blob], 'frame.jpg', { type: blob.type })),
      'image/jpeg',
      0.92,
    ),
  );
}
