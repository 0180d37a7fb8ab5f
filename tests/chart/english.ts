/** Plain English for the chart's words, for tests and for looking at the chart by itself. */
import { TERM_DAYS, toGestationWeeks, toMonths, type AxisDay } from '../../src/lib/age/axis.ts';
import { addDays, partsOf, type CivilDate } from '../../src/lib/age/civil.ts';
import type { Atlas } from '../../src/lib/atlas/atlas.ts';
import type { LaneFigures } from '../../src/lib/chart/model.ts';
import type { ChartWords } from '../../src/lib/chart/words.ts';

const MONTHS =
  'January February March April May June July August September October November December';

const weeksAndDays = (days: number): string => `${Math.floor(days / 7)}w${Math.floor(days % 7)}d`;

export function spoken(day: AxisDay): string {
  if (day < TERM_DAYS) return `${weeksAndDays(day)} of gestation`;
  const months = Math.floor(toMonths(day) + 1e-9);
  const weeks = Math.floor((day - TERM_DAYS - months * 30.4375) / 7);
  return weeks > 0 ? `${months} mo ${weeks} wk` : `${months} mo`;
}

const figure = (day: AxisDay): string =>
  day < TERM_DAYS
    ? `${Math.round(toGestationWeeks(day))} weeks of gestation`
    : `${Math.round(toMonths(day) * 10) / 10} months`;

const stretch = (of: LaneFigures['appears']): string =>
  of ? `${figure(of.from)} to ${figure(of.to)}` : 'not dated';

const GROUPS: Readonly<Record<string, string>> = {
  feeding: 'feeding',
  grasp: 'grasp',
  'startle-vestibular': 'startle and vestibular',
  'tonic-postural': 'tonic and postural',
  'spinal-withdrawal': 'spinal and withdrawal',
  'support-locomotor': 'support and locomotion',
  righting: 'righting',
  protective: 'protective',
  equilibrium: 'equilibrium',
  other: 'other',
};

const STATIONS: Readonly<Record<string, string>> = {
  'arms-from-each-other': 'arms from each other',
  'arms-from-legs': 'arms from legs',
  'protective-forward': 'forward',
  'protective-sideways': 'sideways',
  'protective-backward': 'backward',
};

const SEQUENCES: Readonly<Record<string, string>> = {
  'arms-then-legs': 'Limbs come apart',
  'protective-directions': 'Hands reach out',
};

/** @param due the due date, for a calendar; without one the axis has no dates. */
export function english(atlas: Atlas, due?: CivilDate, born?: CivilDate): ChartWords {
  const date = (day: AxisDay): string => {
    if (!due) return '';
    const { year, month, day: of } = partsOf(addDays(due, Math.round(day - TERM_DAYS)));
    return `${of} ${MONTHS.split(' ')[month - 1] ?? ''} ${year}`;
  };
  const words: ChartWords = {
    chart: 'Reflexes and reactions by age',
    lanes: 'Lanes',
    sequences: 'Sequences',
    ageLine: 'Age',
    reflex: (id) => atlas.reflexes.get(id)?.short ?? id,
    group: (group) => GROUPS[group] ?? group,
    milestone: (id) => atlas.milestones.get(id)?.short ?? id,
    milestones: 'motor milestones, 1st to 99th percentile',
    tick: ({ value }) => String(value),
    weeksCaption: ['weeks of gestation', 'weeks'],
    monthsCaption: ['months after term', 'months'],
    term: 'term',
    clocks: (day) => [
      day < TERM_DAYS ? spoken(day) : `${spoken(day)} ${due ? 'corrected' : 'after term'}`,
      ...(day >= TERM_DAYS ? [`${weeksAndDays(day)} postmenstrual`] : []),
      ...(due && born ? [`${spoken((day + 61) as AxisDay)} since birth`, date(day)] : []),
    ],
    claim: ({ appears, appearsWords, integrates, integratesWords, integratesStatus }) => {
      const from = appears?.asPrinted ?? appearsWords;
      const to =
        integratesStatus === 'persists' ? 'for life' : (integrates?.asPrinted ?? integratesWords);
      return [from ? `appears: ${from}` : '', to ? `goes: ${to}` : ''].filter(Boolean).join('; ');
    },
    laneFigures: (id, figures, sources) =>
      `${words.reflex(id)}: appears ${stretch(figures.appears)}, integrates ${
        figures.lifelong && !figures.integrates ? 'never' : stretch(figures.integrates)
      }, ${sources.sources} sources`,
    lane: ({ id, figures, sources, age, expected }) =>
      `${words.laneFigures(id, figures, sources)}; at ${spoken(age)} ${
        expected === null ? 'no source speaks' : `expected ${expected.toFixed(1)}`
      }`,
    count: ({ count, share }) => `${count.source.short}: ${share.toFixed(2)}`,
    readout: ({ id, age, expected, said, sources, speaking: some }) => {
      const speaking = said.filter((source) => source.phase);
      return {
        title: words.reflex(id),
        lines: [
          `at ${spoken(age)}: expected ${expected === null ? 'by none' : expected.toFixed(2)}; ${some.sources} of ${sources.sources} sources speak`,
          speaking
            .map((source) => `${source.short}: ${source.phase?.replace('-', ' ') ?? ''}`)
            .join(', '),
        ],
      };
    },
    sequence: (id) => SEQUENCES[id] ?? id,
    fits: 'Findings fit best at',
    fit: ({ kind, median }) => `${kind}: ${spoken(median as never)}`,
    order: ({ order }) => order.replace('-', ' '),
    station: (station) =>
      station.event === 'reached'
        ? words.milestone(station.milestone)
        : (STATIONS[station.event === 'sets-apart' ? station.apart : station.reflex] ??
          words.reflex(station.event === 'sets-apart' ? station.apart : station.reflex)),
    response: (response) => response.replace('-', ' '),
    side: (side) => side,
    key: {
      ridge: 'mean expectation of the sources',
      agreed: 'all have it established',
      course: 'came or went in between',
      counted: 'counted in infants',
    },
    height: 'higher: more of the sources expect it',
    table: {
      caption: (day) => `Expected at ${spoken(day)}`,
      lane: 'Reflex or reaction',
      group: 'Group',
      appears: 'Appears',
      integrates: 'Integrates',
      sources: 'Sources',
      voices: 'Voices',
      expected: 'Expected',
      stretch,
      lifelong: 'for life',
      share: (expected) => (expected === null ? 'no source' : expected.toFixed(2)),
      visit: (on) => on,
    },
  };
  return words;
}
