import type { Report } from '../../../../core/evaluation/report.ts';
import type { PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import { LiveText } from '../values/live-text.tsx';
import type { PaddleReader } from './use-paddle.ts';

/** What a row says of a state of the paddle. */
export type PaddleText = (paddle: PaddleFit, report: Report) => string;

/** One value of the paddle, following the hand: its name, its number, and what is said beside it. */
export function PaddleRow(props: {
  name: string;
  read: PaddleReader;
  value: PaddleText;
  beside?: PaddleText;
}) {
  const { name, read, value, beside } = props;
  const live = (text: PaddleText) => (
    <LiveText
      write={(fit, report) => {
        const paddle = read(fit, report);
        return paddle ? text(paddle, report) : '–';
      }}
    />
  );
  return (
    <tr>
      <th scope="row">{name}</th>
      <td className="numeric">{live(value)}</td>
      <td className="soft">{beside && live(beside)}</td>
    </tr>
  );
}
