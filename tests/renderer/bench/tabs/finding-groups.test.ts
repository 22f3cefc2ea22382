import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../core/evaluation/finding.ts';
import { findingGroups } from '../../../../renderer/bench/tabs/findings/finding-groups.ts';

const finding = (id: string, severity: Finding['severity'], seat: number | null = 0) =>
  ({ id, severity, seat }) as Finding;

describe('findings by what they ask for', () => {
  const findings = [
    finding('sinks', 'stop', null),
    finding('knee', 'change'),
    finding('another', 'change', 1),
    finding('perhaps', 'check'),
    finding('fine', 'good'),
  ];
  const ids = (of: readonly Finding[]) => of.map(({ id }) => id);

  it('stop and change are to act on, check is to check, and nobody else’s are told', () => {
    const { act, check, good } = findingGroups(findings, 0);
    expect(ids(act)).toEqual(['sinks', 'knee']);
    expect(ids(check)).toEqual(['perhaps']);
    expect(ids(good)).toEqual(['fine']);
  });

  it('those of the boat are told to every seat', () => {
    expect(ids(findingGroups(findings, 1).act)).toEqual(['sinks', 'another']);
  });
});
