/** What questions are made from: an atlas under the chosen sources, and what all of them agree on. */
import { fromGestationWeeks, fromMonths, toAxisDay } from '../../age/axis.ts';
import { addMonths, type CivilDate } from '../../age/civil.ts';
import { agesOn, birthFromGestation, DEFAULT_LIMITS } from '../../age/clocks.ts';
import type { CorrectionLimits } from '../../age/clocks.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Group, Reflex } from '../../atlas/types.ts';
import { countsNear, shareOf } from '../../judge/counts.ts';
import { readAt, type Compiled, type Reading } from '../../judge/expectation.ts';
import type { Sheet } from '../../judge/judge.ts';
import { phaseAt, ROW, type Phase } from '../../judge/phases.ts';
import { FIRM_SHARE, SPEAKS_AT_LEAST } from '../../judge/thresholds.ts';
import { kept } from './kept.ts';
import type { AskedAge, Difficulty } from '../../words/question.ts';

export interface Ground {
  atlas: Atlas;
  sheet: Sheet;
  limits: CorrectionLimits;
  /** The reflexes that may be asked about; wrong choices come from the whole atlas. */
  asked: ReadonlySet<string>;
  /** Whether only some groups are asked about. */
  isNarrowed: boolean;
  /** How many sources must speak: two, or one where only one is chosen. */
  leastSources: number;
}

/** The ground under a choice of sources; `groups` empty: every group. */
export function groundOf(
  atlas: Atlas,
  sheet: Sheet,
  groups: readonly Group[] = [],
  limits: CorrectionLimits = DEFAULT_LIMITS,
): Ground {
  const chosen = new Set(
    [...sheet.values()].flatMap(({ windows }) => windows.map((w) => w.claim.source.id)),
  );
  const isNarrowed = groups.length > 0;
  const asked = [...atlas.reflexes.values()].filter((r) => !isNarrowed || groups.includes(r.group));
  return {
    atlas,
    sheet,
    limits,
    asked: new Set(asked.map(({ id }) => id)),
    isNarrowed,
    leastSources: chosen.size === 1 ? 1 : 2,
  };
}

export const askedReflexes = ({ atlas, asked }: Ground): Reflex[] =>
  [...atlas.reflexes.values()].filter(({ id }) => asked.has(id));

/** Those of which enough of the chosen sources speak at all. */
export const datedReflexes = (ground: Ground): Reflex[] =>
  askedReflexes(ground).filter(({ id }) => {
    const windows = ground.sheet.get(id)?.windows ?? [];
    return new Set(windows.map((w) => w.claim.source.id)).size >= ground.leastSources;
  });

/**
 * No age within this many days of any edge of any source's window is asked about: a week, and the two
 * days by which months counted from another date may differ. A choice of ours.
 */
export const CLEAR_DAYS = 9;

/** How far from every edge the asked age lies, by difficulty, days. Choices of ours. */
export const EDGE_DAYS: Readonly<Record<Difficulty, readonly [number, number]>> = {
  easy: [45, 300],
  medium: [20, 120],
  hard: [CLEAR_DAYS, 60],
};

/** Days from an age to the nearest edge of any window held under the choice; nothing changes within it. */
export function edgeDays({ edges }: Compiled, day: number): number {
  let nearest = Infinity;
  for (const edge of edges) nearest = Math.min(nearest, Math.abs(edge - day));
  return nearest;
}

/** The sources that speak at a reading, each once. */
export function speakers(reading: Reading): string[] {
  const speaking = reading.compiled.windows.filter(
    (_, i) => 1 - reading.phases[i * ROW]! > SPEAKS_AT_LEAST,
  );
  return [...new Set(speaking.map((w) => w.claim.source.id))];
}

/** What every source that speaks says of a reflex at an age. */
export interface Agreed {
  phase: Phase;
  sources: readonly string[];
  edgeDays: number;
}

/** More infants than this who answer otherwise put "gone" or "there" in dispute, per cent. */
const FEW_PERCENT = 10;

/**
 * Whether infants were counted near an age in numbers that speak against a phase: more than a few
 * who answer where it should be gone or not yet come, or who do not where it should be there.
 */
export function countedAgainst(
  { atlas }: Ground,
  reflex: string,
  phase: Phase,
  day: number,
): boolean {
  if (phase === 'emerging' || phase === 'integrating') return false;
  const other = phase !== 'established';
  return countsNear(atlas.counts.get(reflex) ?? [], toAxisDay(day)).some(
    ({ count }) => count.role === 'count' && (shareOf(count, other) ?? 0) > FEW_PERCENT,
  );
}

/**
 * The phase in which every source that speaks has a reflex, each with nearly all that it says;
 * undefined where too few speak, any says otherwise, an edge is near, or counts speak against it.
 */
export const agreedAt = (ground: Ground, reflex: string, age: AskedAge): Agreed | undefined =>
  kept(ground, `agreed ${reflex} ${age.axisDay} ${age.sdDays}`, () => agreed(ground, reflex, age));

function agreed(ground: Ground, reflex: string, age: AskedAge): Agreed | undefined {
  const compiled = ground.sheet.get(reflex);
  if (!compiled) return undefined;
  const edge = edgeDays(compiled, age.axisDay);
  if (edge < CLEAR_DAYS) return undefined;
  const reading = readAt(compiled, age.axisDay, age.sdDays);
  const sources = speakers(reading);
  if (sources.length < ground.leastSources) return undefined;
  let common = 0;
  for (let i = 0; i < compiled.windows.length; i++) {
    const row = reading.phases.subarray(i * ROW, i * ROW + ROW);
    const spoken = 1 - row[0]!;
    if (spoken <= SPEAKS_AT_LEAST) continue;
    const most = row.indexOf(Math.max(...row.subarray(1)), 1);
    if (row[most]! < FIRM_SHARE * spoken || (common > 0 && common !== most)) return undefined;
    common = most;
  }
  const phase = phaseAt(common);
  if (!phase || countedAgainst(ground, reflex, phase, age.axisDay)) return undefined;
  return { phase, sources, edgeDays: edge };
}

/** Ages that are asked about: even weeks of gestation from 28 to 38, then months from 1 to 24. */
export const PLAIN_AGES: readonly AskedAge[] = [
  ...[28, 30, 32, 34, 36, 38].map((value): AskedAge => ({
    axisDay: fromGestationWeeks(value),
    sdDays: 0,
    unit: 'weeks',
    value,
    bornDays: null,
  })),
  ...Array.from({ length: 24 }, (_, i): AskedAge => ({
    axisDay: fromMonths(i + 1),
    sdDays: 0,
    unit: 'months',
    value: i + 1,
    bornDays: null,
  })),
];

/** Any date would do: an age of so many calendar months moves by a day or two with it, an edge is farther. */
const SOME_BIRTH = '2025-03-10' as CivilDate;

/** The age that counts of an infant born early, so many months after birth, dated by an early scan. */
export function bornEarly(ground: Ground, bornDays: number, months: number): AskedAge | undefined {
  const birth = birthFromGestation(SOME_BIRTH, bornDays, 'ultrasound-first-trimester');
  if ('code' in birth) return undefined;
  const ages = agesOn(birth, addMonths(SOME_BIRTH, months), ground.limits);
  if (ages.counts !== 'corrected') return undefined;
  return { axisDay: ages.axisDay, sdDays: ages.sdDays, unit: 'months', value: months, bornDays };
}
