/**
 * A child's own chart made thin: one line from birth to now on the whole axis, the visits as ticks on
 * it, and above each visit what asked for attention there. Drawn beside many others, so all of it is a
 * few paths in axis days across and pixels down, as the lanes are, and none is drawn anew for a width.
 */
import { fromMonths, TERM, type AxisDay } from '../age/axis.ts';
import { WHOLE } from './viewport.ts';

/** What asked for attention on one day, counted. */
export interface ThinVisit {
  day: AxisDay;
  discuss: number;
  watch: number;
}

export interface ThinData {
  /** Where birth lies. */
  born: AxisDay;
  /** The age now, and half of its 95 % spread in days; undefined before birth. */
  now: { day: AxisDay; spreadDays: number } | undefined;
  visits: readonly ThinVisit[];
}

/** The whole strip from top to bottom, px. */
export const THIN_PX = 40;

/** Where the line of the child's life lies, px from the top. */
const LINE = 34;
/** The marks stand in a column above their visit: the lowest, and from one to the next, px. */
const LOWEST = 24;
const PITCH = 7;
/** So many marks have room; of more the topmost place says that there are more. */
export const MOST_MARKS = 4;

/** The shapes as paths; an empty one is not drawn. */
export interface ThinPaths {
  life: string;
  born: string;
  visits: string;
  discuss: string;
  watch: string;
  more: string;
  now: string;
}

const rounded = (value: number): number => Math.round(value * 10) / 10;

const place = (index: number): number => LOWEST - index * PITCH;

/** Half the length of the bar for "more", in axis days: long enough to be seen at any usual width. */
const MORE_DAYS = 5;

export function thinPaths({ born, now, visits }: ThinData): ThinPaths {
  const paths: ThinPaths = {
    life: '',
    born: `M${rounded(born)} ${LINE - 6}V${LINE + 5}`,
    visits: '',
    discuss: '',
    watch: '',
    more: '',
    now: '',
  };
  if (now) {
    const day = rounded(now.day);
    paths.life = `M${rounded(born)} ${LINE}H${day}`;
    const spread = rounded(now.spreadDays);
    paths.now = `M${day} 0V${THIN_PX}${spread > 0 ? `M${day - spread} 1H${day + spread}` : ''}`;
  }
  for (const { day, discuss, watch } of visits) {
    const x = rounded(day);
    paths.visits += `M${x} ${LINE - 3.5}v7`;
    const all = discuss + watch;
    const shown = all > MOST_MARKS ? MOST_MARKS - 1 : all;
    for (let index = 0; index < shown; index++)
      paths[index < discuss ? 'discuss' : 'watch'] += `M${x} ${place(index)}h0`;
    if (all > shown) paths.more += `M${x - MORE_DAYS} ${place(shown)}h${2 * MORE_DAYS}`;
  }
  return paths;
}

/** The ground every strip stands on: before term, term itself, and every half year after. */
export const THIN_GROUND = {
  /** The whole axis, as the box that is looked into. */
  viewBox: `${WHOLE.from} 0 ${WHOLE.to - WHOLE.from} ${THIN_PX}`,
  womb: `M${WHOLE.from} 0H${TERM}V${THIN_PX}H${WHOLE.from}Z`,
  term: `M${TERM} 0V${THIN_PX}`,
  months: [6, 12, 18].map((month) => `M${rounded(fromMonths(month))} 0V${THIN_PX}`).join(''),
} as const;
