import type { ImageSize, Pixel } from '../../../core/photograph/camera.ts';

/** Half of the side of the square that is magnified, as a share of the picture's width. */
const HALF_SHARE = 0.03;

/** The surroundings of a point, magnified, with a cross at the point. */
export function Magnifier({
  source,
  image,
  at,
}: {
  source: string;
  image: ImageSize;
  at: Pixel | null | undefined;
}) {
  if (!at) return null;
  const half = HALF_SHARE * image.width;
  const left = at.u < image.width / 2 ? 'right' : 'left';
  return (
    <svg
      className={`photograph-magnifier on-${left}`}
      viewBox={`${at.u - half} ${at.v - half} ${2 * half} ${2 * half}`}
      aria-hidden="true"
    >
      <image href={source} width={image.width} height={image.height} />
      <path
        d={`M${at.u - half} ${at.v}h${2 * half}M${at.u} ${at.v - half}v${2 * half}`}
        strokeWidth={half / 60}
      />
    </svg>
  );
}
