import { sayUnchanged } from '../language/messages.ts';

/** Longest side of a kept picture, pixels: enough to read a tape on it. */
const LONGEST = 2048;
/** Share of a JPEG's best quality. */
const QUALITY = 0.85;
/** A larger file is not opened, bytes. */
const MOST_BYTES = 40 * 1024 * 1024;

/**
 * A picture drawn again as a smaller JPEG, as Base64; or in words why that fails. Drawing it again removes
 * what a telephone writes into a file: place, time, owner.
 */
export async function smallPicture(file: File): Promise<{ data: string } | { problem: string }> {
  if (file.size > MOST_BYTES) return { problem: sayUnchanged('photos.too-large', { file: file.name }) };
  const problem = sayUnchanged('photos.not-a-picture', { file: file.name });
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return { problem };
  }
  const blob = await drawnSmall(picture);
  picture.close();
  return blob ? { data: await base64Of(blob) } : { problem };
}

function drawnSmall(picture: ImageBitmap): Promise<Blob | null> {
  const shrink = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * shrink));
  canvas.height = Math.max(1, Math.round(picture.height * shrink));
  const pen = canvas.getContext('2d');
  if (!pen) return Promise.resolve(null);
  // A JPEG has no clear places; white paper shows through them.
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
}

/** Size of a JPEG given as Base64, pixels, as it is shown. */
export async function pictureSize(data: string): Promise<{ width: number; height: number }> {
  const picture = new Image();
  picture.src = `data:image/jpeg;base64,${data}`;
  await picture.decode();
  return { width: picture.naturalWidth, height: picture.naturalHeight };
}

function base64Of(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,/, ''));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}
