import type { Fit } from '../document/fit-schema.ts';
import { type Finding, SEVERITIES } from '../evaluation/finding.ts';
import type { QuantityId } from '../evaluation/quantities.ts';
import type { Report } from '../evaluation/report.ts';
import type { Side } from '../frame/mirror.ts';
import type { Format } from '../text/format.ts';
import { athleteSentence } from '../text/sentences.ts';
import type { Words } from '../text/words.ts';
import { type ToldChange, toldChanges } from './change-words.ts';
import { feltOf } from './felt-change.ts';

/** Quantities that an athlete reads about, the most important first; good news is picked in this order. */
const GOOD_ORDER: readonly QuantityId[] = [
  'supportMargin',
  'offCentre',
  'trunkPitch',
  'frontKnee',
  'kneelingKnee',
  'kneeShare',
  'rearShare',
  'trimRest',
  'padAft',
  'rearAnkle',
  'strapReleases',
];
/** Lines of what is good: more is not read. */
const MOST_GOOD = 4;
/** Lines of what to watch. */
const MOST_WATCHED = 4;
/** Lines of why the setting is as it is. */
const MOST_REASONS = 3;

/** One revision of a fit with its report. */
export interface ShownFit {
  readonly fit: Fit;
  readonly report: Report;
}

/** A sentence about the setting before, and the one now. */
export interface ToldReason {
  readonly before: string;
  readonly now: string;
}

/** Everything that an athlete reads about their own position, in plain words; never about body mass. */
export interface ShowStory {
  readonly athleteName: string;
  readonly kneels: Side;
  readonly paddles: Side;
  /** What is good, the most important first. */
  readonly good: readonly string[];
  /** What is not, the gravest first. */
  readonly watch: readonly { readonly sentence: string; readonly stop: boolean }[];
  /** True where there is more to watch than is listed. */
  readonly more: boolean;
  /** What changes from before to now; empty when there is nothing before. */
  readonly changes: readonly ToldChange[];
  /** What to feel for, by the values and by what was moved. */
  readonly feel: readonly string[];
  /** What got better. */
  readonly reasons: readonly ToldReason[];
}

/** The story of seat `index` of a fit, compared with an earlier one if there is one. Null when the seat is empty. */
export function showStory(
  now: ShownFit,
  options: { index: number; before: ShownFit | null; format: Format; words: Words },
): ShowStory | null {
  const { index, before, format, words } = options;
  const seat = now.fit.seats[index];
  if (!seat?.athlete) return null;
  const findings = ofSeat(now.report, index);
  const good = goodNews(findings, words);
  const watch = watched(findings, words);
  const kneels = seat.kneels ?? seat.side;
  const earlier = before?.fit.seats[index];
  const changes = earlier ? toldChanges(earlier, seat, { kneels, format, words }) : [];
  const reports = before && { before: before.report, now: now.report };
  const felt = reports && changes.length > 0 ? feltOf(reports, index, words) : [];
  return {
    athleteName: seat.athlete.name,
    kneels,
    paddles: seat.side,
    good: good.slice(0, MOST_GOOD),
    watch: watch.slice(0, MOST_WATCHED),
    more: watch.length > MOST_WATCHED,
    changes,
    feel: [...felt, ...changes.map(({ feel }) => feel)].filter(distinct),
    reasons: before ? reasonsFor(ofSeat(before.report, index), findings, words) : [],
  };
}

/** Findings of a seat and of the whole boat. */
function ofSeat(report: Report, index: number): Finding[] {
  return report.findings.filter(({ seat }) => seat === null || seat === index);
}

/** Good news first, then what is in its band but near an edge: an athlete need not act on that. */
function goodNews(findings: readonly Finding[], words: Words): string[] {
  const inBand = GOOD_ORDER.flatMap((id) => findings.filter((f) => f.quantity === id && !needsLooking(f)));
  return [...inBand.filter(({ severity }) => severity === 'good'), ...inBand]
    .map((finding) => athleteSentence(finding, words))
    .filter(distinct);
}

/** Whether a finding is for the athlete: a check only where the value itself lies outside its band. */
function needsLooking({ severity, distance }: Finding): boolean {
  return severity === 'change' || severity === 'stop' || (severity === 'check' && distance > 0);
}

/** Sentences of what to look at, each told once. */
function watched(findings: readonly Finding[], words: Words): { sentence: string; stop: boolean }[] {
  const told = findings
    .filter(needsLooking)
    .map((finding) => ({ sentence: athleteSentence(finding, words), stop: finding.severity === 'stop' }));
  const sentences = told.map(({ sentence }) => sentence);
  return told.filter(({ sentence }, k) => distinct(sentence, k, sentences));
}

/** Whether a sentence says something, and for the first time. */
function distinct(sentence: string, index: number, all: readonly string[]): boolean {
  return sentence !== '' && all.indexOf(sentence) === index;
}

/** What is milder now than it was, the greatest improvement first. */
function reasonsFor(before: readonly Finding[], now: readonly Finding[], words: Words): ToldReason[] {
  const grave = (finding: Finding) => SEVERITIES.indexOf(finding.severity);
  return now
    .flatMap((finding) => {
      const earlier = before.find(({ id }) => id === finding.id);
      const gain = earlier ? grave(earlier) - grave(finding) : 0;
      return earlier && gain > 0
        ? [{ gain, before: athleteSentence(earlier, words), now: athleteSentence(finding, words) }]
        : [];
    })
    .filter(({ before: was, now: is }) => was !== is)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, MOST_REASONS)
    .map(({ before: was, now: is }) => ({ before: was, now: is }));
}
