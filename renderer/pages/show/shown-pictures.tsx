import { useId } from 'react';
import type { PhotoRecord } from '../../../app/contract/photos.ts';
import { type FaceCircle, faceCircle } from '../../../core/photograph/face-circle.ts';
import { useCall } from '../../client/use-call.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** The photographs of the athlete in this fit that the coach chose to show, the face blurred unless chosen otherwise. */
export function ShownPictures({ athleteId, fitId }: { athleteId: string; fitId: string }) {
  const { value } = useCall('photos.ofAthlete', { athleteId });
  const shown = (value ?? []).filter((photo) => photo.fitId === fitId && photo.study?.shown);
  if (shown.length === 0) return null;
  return (
    <section className="show-photographs" aria-label={say('photograph.shown')}>
      {shown.map((photo) => (
        <ShownPicture key={photo.id} photo={photo} />
      ))}
    </section>
  );
}

function ShownPicture({ photo }: { photo: PhotoRecord }) {
  const { value: picture } = useCall('photos.open', { id: photo.id });
  const study = photo.study!;
  const face = study.faceSeen ? null : faceCircle(study.joints);
  if (!picture) return null;
  // Without marks nobody knows where the face is: then the picture stays away.
  if (!study.faceSeen && !face) return <p className="soft">{say('photograph.shown.no-head')}</p>;
  const { width, height } = study.image;
  const source = `data:${picture.mime};base64,${picture.data}`;
  const name = say('photograph.shown.picture', {
    moment: say(`photograph.moment.${study.moment}`),
    day: dateText(study.takenOn ?? photo.addedAt),
  });
  return (
    <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <image href={source} width={width} height={height} />
      {face && <BlurredFace source={source} width={width} height={height} face={face} />}
    </svg>
  );
}

function BlurredFace(props: { source: string; width: number; height: number; face: FaceCircle }) {
  const { source, width, height, face } = props;
  const id = useId();
  return (
    <g data-testid="blurred-face">
      <filter id={`${id}blur`}>
        <feGaussianBlur stdDeviation={face.radius / 3} />
      </filter>
      <clipPath id={`${id}face`}>
        <circle cx={face.centre.u} cy={face.centre.v} r={face.radius} />
      </clipPath>
      <g clipPath={`url(#${id}face)`}>
        <image href={source} width={width} height={height} filter={`url(#${id}blur)`} />
      </g>
    </g>
  );
}
