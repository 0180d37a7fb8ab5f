/** Which children of the list are wanted, and in what order. */
import type { CivilDate } from '../age/civil.ts';
import { addDays } from '../age/civil.ts';
import { compareLabels } from '../platform/compareLabels.ts';
import { folded } from '../platform/foldText.ts';
import { monthsNow, type RollLine } from './roster.ts';
import { once } from '../platform/sets.ts';

/** By the age that counts, months after term: the first is met from `from` up to but without `to`. */
export const AGE_BANDS = {
  'before-term': { from: -Infinity, to: 0 },
  '0-3': { from: 0, to: 3 },
  '3-6': { from: 3, to: 6 },
  '6-12': { from: 6, to: 12 },
  '12-24': { from: 12, to: 24 },
  'from-24': { from: 24, to: Infinity },
} as const;
export type AgeBand = keyof typeof AGE_BANDS;
export const AGE_BAND_NAMES = Object.keys(AGE_BANDS) as AgeBand[];

/** What asks: something to discuss; to discuss or watch; seen and nothing; not seen yet. */
export const ASKINGS = ['discuss', 'asking', 'nothing', 'unseen'] as const;
export type Asking = (typeof ASKINGS)[number];

/** Due for a check today, or within four weeks. */
export const DUES = ['due', 'soon'] as const;
export type Due = (typeof DUES)[number];
const SOON_DAYS = 28;

export const SORTS = ['label', 'age', 'asks', 'check', 'seen'] as const;
export type Sort = (typeof SORTS)[number];

export interface Wanted {
  /** As typed; empty: any. The same holds of every other part. */
  find: string;
  age: AgeBand | '';
  asks: Asking | '';
  check: Due | '';
  tag: string;
  examiner: string;
  /** Whether what is archived is shown too. */
  archived: boolean;
  sort: Sort;
}

export const EVERYONE: Wanted = {
  find: '',
  age: '',
  asks: '',
  check: '',
  tag: '',
  examiner: '',
  archived: false,
  sort: 'label',
};

/** Whether anything is left out but the archive. */
export const isNarrowed = ({ find, age, asks, check, tag, examiner }: Wanted): boolean =>
  [find.trim(), age, asks, check, tag, examiner].some((part) => part !== '');

const inBand = (line: RollLine, band: AgeBand): boolean => {
  const months = monthsNow(line);
  const { from, to } = AGE_BANDS[band];
  return months !== undefined && months >= from && months < to;
};

function isAsking({ asks, lastSeen }: RollLine, asking: Asking): boolean {
  switch (asking) {
    case 'discuss':
      return asks.discuss > 0;
    case 'asking':
      return asks.discuss + asks.watch > 0;
    case 'nothing':
      return lastSeen !== undefined && asks.discuss + asks.watch === 0;
    case 'unseen':
      return lastSeen === undefined;
  }
}

const isDueBy = ({ next }: RollLine, by: CivilDate): boolean => next !== undefined && next.by <= by;

/** The lines that fit all of what is wanted, in the order they came; what is cheap to tell comes first. */
export function fitting(lines: readonly RollLine[], wanted: Wanted): RollLine[] {
  const words = folded(wanted.find).split(/\s+/u).filter(Boolean);
  return lines.filter((line) => {
    const { record } = line;
    if (record.archived && !wanted.archived) return false;
    if (wanted.tag && !record.tags.includes(wanted.tag)) return false;
    if (wanted.examiner && !line.examiners.includes(wanted.examiner)) return false;
    if (wanted.age && !inBand(line, wanted.age)) return false;
    if (!words.every((word) => line.text.includes(word))) return false;
    if (wanted.check) {
      const by = wanted.check === 'due' ? line.on : addDays(line.on, SOON_DAYS);
      if (!isDueBy(line, by)) return false;
    }
    return !wanted.asks || isAsking(line, wanted.asks);
  });
}

const byLabel = (a: RollLine, b: RollLine): number =>
  compareLabels(a.label, b.label) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Civil dates sort as text; none comes first or last. */
const byDate = (a: CivilDate | undefined, b: CivilDate | undefined, none: string): number => {
  const [x, y] = [a ?? none, b ?? none];
  return x < y ? -1 : x > y ? 1 : 0;
};

const ORDERS: Readonly<Record<Sort, (a: RollLine, b: RollLine) => number>> = {
  label: byLabel,
  /** The youngest first. */
  age: (a, b) => (monthsNow(a) ?? -Infinity) - (monthsNow(b) ?? -Infinity) || 0,
  asks: (a, b) => b.asks.discuss - a.asks.discuss || b.asks.watch - a.asks.watch || b.open - a.open,
  check: (a, b) => byDate(a.next?.by, b.next?.by, '~'),
  /** Who was seen longest ago first, before them who was never seen. */
  seen: (a, b) => byDate(a.lastSeen, b.lastSeen, ''),
};

/** The lines in an order; equals stand by their label. */
export const sorted = (lines: readonly RollLine[], sort: Sort): RollLine[] =>
  lines.toSorted((a, b) => ORDERS[sort](a, b) || byLabel(a, b));

/** Every tag in use, and every examiner, for choosing among. */
export const tagsIn = (lines: readonly RollLine[]): string[] =>
  once(lines.flatMap(({ record }) => record.tags)).sort(compareLabels);
export const examinersIn = (lines: readonly RollLine[]): string[] =>
  once(lines.flatMap(({ examiners }) => examiners)).sort(compareLabels);

const oneOf = <T extends string>(text: string | null, known: readonly T[]): T | '' =>
  known.find((one) => one === text) ?? '';

/** What is wanted, from the query of an address; what is not understood is left out. */
export const wantedFrom = (query: URLSearchParams): Wanted => ({
  find: query.get('find') ?? '',
  age: oneOf(query.get('age'), AGE_BAND_NAMES),
  asks: oneOf(query.get('asks'), ASKINGS),
  check: oneOf(query.get('check'), DUES),
  tag: query.get('tag') ?? '',
  examiner: query.get('examiner') ?? '',
  archived: query.has('archived'),
  sort: oneOf(query.get('sort'), SORTS) || EVERYONE.sort,
});

/** The query of an address at which the same is wanted. */
export function queryOf(wanted: Wanted): string {
  const query = new URLSearchParams();
  for (const part of ['find', 'age', 'asks', 'check', 'tag', 'examiner'] as const)
    if (wanted[part].trim()) query.set(part, wanted[part].trim());
  if (wanted.archived) query.set('archived', '1');
  if (wanted.sort !== EVERYONE.sort) query.set('sort', wanted.sort);
  const text = query.toString();
  return text ? `?${text}` : '';
}
