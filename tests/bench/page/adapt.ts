/** The benchmark's workload as the chart's own data. */
import {
  fromGestationWeeks,
  toAxisDay,
  toMonths,
  type AxisDay,
} from '../../../src/lib/age/axis.ts';
import type { Response } from '../../../src/lib/case/finding.ts';
import type { ChartData, LaneData, SourceBand } from '../../../src/lib/chart/model.ts';
import type { ChartWords } from '../../../src/lib/chart/words.ts';
import type { Workload } from '../workload.js';

type Band = Workload['lanes'][number]['bands'][number];

const NEVER = toAxisDay(Infinity);

function bandOf(band: Band, colours: ReadonlyMap<string, string>): SourceBand {
  const colour = colours.get(band.source);
  return {
    source: band.source,
    short: band.source,
    speaksFrom: toAxisDay(-Infinity),
    appearsFrom: fromGestationWeeks(band.a0),
    appearsTo: fromGestationWeeks(band.a1),
    integratesFrom: band.b0 === null ? NEVER : fromGestationWeeks(band.b0),
    integratesTo: band.b1 === null ? NEVER : fromGestationWeeks(band.b1),
    speaksTo: NEVER,
    ...(colour ? { colour } : {}),
  };
}

const RESPONSES: readonly Response[] = ['not-elicited', 'weak', 'elicited', 'brisk'];

/** Every lane with its windows and marks; the lanes are shown dense, so they carry no ridge. */
export function dataOf(work: Workload): ChartData {
  const colours = new Map(work.sources.map((source) => [source.id, source.color]));
  const visitAt = new Map(work.visits.map((visit, index) => [visit.id, index]));
  const lanes = work.lanes.map((lane): LaneData => ({
    id: lane.id,
    group: null,
    ridge: [],
    bands: lane.bands.map((band) => bandOf(band, colours)),
    figures: { appears: null, integrates: null, lifelong: false },
    appearsBy: 0,
    integratesBy: 0,
  }));
  return {
    lanes,
    sequences: [],
    milestones: [],
    child: {
      visits: work.visits.map(({ age, sd }) => ({
        day: fromGestationWeeks(age),
        spreadDays: 1.96 * sd * 7,
        on: '',
      })),
      marks: work.findings.map((finding) => ({
        reflex: finding.lane,
        side: finding.side === 'L' ? 'left' : 'right',
        response: RESPONSES[finding.value] ?? 'not-assessable',
        day: fromGestationWeeks(finding.age),
        spreadDays: ((finding.hi - finding.lo) / 2) * 7,
        visit: visitAt.get(finding.visit) ?? 0,
        asks: false,
      })),
      courses: [],
      spread: null,
    },
  };
}

const spoken = (day: AxisDay): string =>
  day < 280 ? `${(day / 7).toFixed(1)} weeks of gestation` : `${toMonths(day).toFixed(1)} months`;

/** Words for a chart that nobody reads. */
export function wordsOf(work: Workload): ChartWords {
  const labels = new Map(work.lanes.map((lane) => [lane.id, lane.label]));
  const name = (id: string): string => labels.get(id) ?? id;
  return {
    chart: 'Chart',
    lanes: 'Lanes',
    sequences: 'Sequences',
    ageLine: 'Age',
    reflex: name,
    group: (group) => group,
    milestone: (id) => id,
    milestones: 'Milestones',
    tick: ({ value }) => String(value),
    weeksCaption: ['weeks of gestation', 'weeks'],
    monthsCaption: ['months after term', 'months'],
    term: 'term',
    clocks: (day) => [spoken(day)],
    claim: () => '',
    laneFigures: (id, _, sources) => `${name(id)}: ${sources.sources} sources`,
    lane: ({ id, age, said }) =>
      `${name(id)}: at ${spoken(age)} ${said.filter((source) => source.phase === 'established').length} established`,
    count: () => '',
    readout: ({ id }) => ({ title: name(id), lines: [] }),
    sequence: (id) => id,
    fits: '',
    fit: () => '',
    order: ({ order }) => order,
    station: () => '',
    response: (response) => response,
    side: (side) => side,
    key: { ridge: '', agreed: '', course: '', counted: '' },
    height: '',
    table: {
      caption: spoken,
      lane: '',
      group: '',
      appears: '',
      integrates: '',
      sources: '',
      voices: '',
      expected: '',
      stretch: () => '',
      lifelong: '',
      share: () => '',
      visit: (on) => on,
    },
  };
}
