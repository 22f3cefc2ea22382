import { describe, expect, it } from 'vitest';
import { tapePercentile } from '../../../core/body/tape-percentile.ts';
import { unusualTapes } from '../../../core/body/unusual-tapes.ts';
import { exampleAthlete } from '../example/example-fit.ts';

const WITH = { sittingHeight: { valueM: 0.94 }, footLength: { valueM: 0.27 } };

describe('tape measures that few persons have', () => {
  it('are none of a usual body, and none where nothing was measured', () => {
    expect(unusualTapes(exampleAthlete({ tape: WITH }))).toEqual([]);
    expect(unusualTapes(exampleAthlete())).toEqual([]);
  });

  it('are named with what would be usual', () => {
    const odd = unusualTapes(exampleAthlete({ tape: { ...WITH, footLength: { valueM: 0.72 } } }));
    expect(odd).toMatchObject([{ measure: 'footLength', valueM: 0.72, place: { usual: false } }]);
    const place = tapePercentile('footLength', 0.72, { stature: 1.8, mass: 80, sex: 'male', ageYears: null });
    expect(odd[0]?.place).toEqual(place);
  });

  it('are fewer of a junior, on the day of measuring', () => {
    const { high } = tapePercentile('footLength', 0.25, { stature: 1.8, mass: 80, sex: 'male' });
    const tape = { footLength: { valueM: high + 0.001 } };
    const of = (bornOn: string) => unusualTapes(exampleAthlete({ tape, bornOn, measuredOn: '2026-05-01' }));
    expect(of('1999-01-01')).toHaveLength(1);
    expect(of('2012-01-01')).toHaveLength(0);
  });
});
