/** English for the page that says how reading works: what is inferred, what grades mean, every constant. */
import { toAxisDay, toMonths, TERM_DAYS } from '../../age/axis.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { Cap } from '../../judge/caps.ts';
import type { TodayBasis } from '../../judge/reading/asks.ts';
import type {
  ConstantBasis,
  ConstantGroup,
  ConstantName,
  ConstantUnit,
  ShownConstant,
} from '../../judge/reading/shown.ts';
import type { Part, Worked } from '../../judge/reading/worked.ts';
import type { Attention } from '../../judge/rules/rule.ts';

/** Says the value of a constant, so that no sentence can differ from the code. */
export type Said = (name: ConstantName) => string;

/** A number as it is printed: at most four significant digits. */
export const number = (value: number): string => {
  const short = Number(value.toPrecision(4));
  return Math.abs(short) < 1e-6 && short !== 0 ? short.toFixed(9) : String(short);
};

const fixed = (value: number, digits = 4): string => value.toFixed(digits);

export const title = 'How reading works';
export const lead =
  'How a finding is compared with the sources, what is inferred from all visits, what each grade means, and the numbers all of it depends on. The numbers on this page are taken from the program itself.';
export const contents = 'On this page';

interface Titled {
  id: string;
  title: string;
  paragraphs: readonly string[];
}

/** One finding at one age. */
export const finding = (n: Said): Titled => ({
  id: 'finding',
  title: 'A finding is read against the sources',
  paragraphs: [
    'Each source is read as a window: the ages at which a response may appear, is established, and may integrate. Where a source gives no age it is silent. Silence is not counted as agreement.',
    'A finding is placed at the child’s age. In a child born early this is the corrected age, up to the limit in Settings. The doubt in the due date is carried through every number.',
    'The share of a verdict is how much of what the sources say supports it. Sources that copy one another share one voice. A share is not a percentile of infants.',
    `A verdict is firm where every source that gives an age supports it with ${n('FIRM_SHARE')} or more. A response that was not assessable is not judged, nor is one that was not elicited in a state in which it cannot be expected.`,
  ],
});

export const inferred = {
  id: 'inferred',
  title: 'Inferred from all visits',
  lead: 'The sources say what to expect before a child is seen. The visits are then weighed against it. Every visit of a child is placed by one clock: the corrected age if born before the limit of gestation in Settings, at any age. A change of clock would move the visits against each other.',
};

/** What is inferred, each with how. */
export const parts = (n: Said): readonly (readonly [term: string, text: string])[] => [
  [
    'Progress of a response',
    `When it appeared and when it integrated, with the interval that holds ${n('INTERVAL')} of the probability. A day counts as present if anyone elicited it on any side, and as not elicited if it was looked for on that day and nobody elicited it. A response that is present is taken to be missed with probability ${n('MISSED')} (${n('MISSED_TELLS_LITTLE')} where not eliciting it gives little information), one that is not present to be imagined with ${n('IMAGINED')}. With probability ${n('ODD')} a child may differ from every source.`,
  ],
  [
    'Sequences',
    `Which of two events came first, from the sources alone and with the child’s visits. How far the visits change it is the odds ratio. In order: probability ${n('IN_ORDER_PROBABILITY')} or more and odds ratio ${n('IN_ORDER_ODDS')} or more. Reversed: odds ratio ${n('REVERSED_ODDS')} or less, where the probability is under ${n('REVERSED_PROBABILITY')} or the sources alone gave ${n('REVERSED_SOURCES')} or more. Against: odds ratio ${n('AGAINST_ODDS')} or less otherwise. All else is not yet known, with the reason: the visits begin too late, it was not tested, the sources overlap, it is still to come, or no chosen source dates it. Only where the sources alone give an order ${n('SURE_SOURCES')} or more is a reversed one to be discussed, and one that the visits contradict to be rechecked.`,
  ],
  [
    'Seen before, not now; lost',
    `A response was elicited on an earlier day and is not elicited now, at an age by which the sources expect it to have integrated with less than ${n('NOT_GONE')}. It is to be rechecked: tried again at the same visit, and seen again within ${n('SEEN_AGAIN_DAYS')} days. It is lost, and to be discussed, if it is not elicited on another day too, if ${n('LOST_TOGETHER')} or more are not elicited at one visit, if it is not elicited on one side while the other responds, or if something else is to be discussed at that visit.`,
  ],
  [
    'Best-fitting age',
    `The age after term at which the findings of one visit would be most typical: for transient responses (those that integrate), for lifelong responses, and for milestones. It is shown if at least ${n('FIT_REFLEXES')} reflexes (${n('FIT_MILESTONES')} milestones) are included and the interval is narrower than ${n('FIT_WIDEST_MONTHS')} months with one peak. It takes responses as independent, so its range is too narrow. It is not the developmental age of a normed test.`,
  ],
  [
    'Side and limb',
    `Of the findings that differ between the sides, which side is the less expected: the weaker one where the mean expectation is ${n('EXPECTED_THERE')} or more, the stronger one below that. The side that responds as expected is not graded for it.`,
  ],
];

export const grades = {
  id: 'grades',
  title: 'The grades, from most to least',
  lead: 'A finding has the highest grade that any of its reasons gives it.',
};

/** What each grade means and when it is given. */
export const gradeMeans = (n: Said): Readonly<Record<Attention, readonly string[]>> => ({
  today: ['To be seen by a doctor today. When this is said is listed below, with its basis.'],
  discuss: [
    'To be discussed with the team.',
    `Given without limit: obligatory; re-emerged, where at the visit without it the response had integrated with probability ${n('CREDIBLY_GONE')} or more (to be rechecked below that); lost; and a marked difference between the sides where the response is expected, where one side still has what nearly all sources expect to have integrated, or where the same side is the stronger on ${n('STAYS_DAYS')} days in a row or more. An obligatory response that was seen only in a crying infant is to be rechecked until it is seen in a calm one.`,
    `Given by the sources: persisting, or expected and not elicited, with a share of ${n('DISCUSS_SHARE')} or more, unless one of the limits below applies. A milestone that is not seen after the 99th percentile of its window, or that the carer alone says is lost.`,
  ],
  watch: [
    'To be rechecked.',
    `Persisting, or expected and not elicited, with a share over ${n('WATCH_SHARE')}, or more with a limit that applies. Early with a share of ${n('DISCUSS_SHARE')} or more. Brisk, weak where it should be strong, other differences between the sides, seen before and not now. A milestone that is not seen between the 90th and the 99th percentile.`,
  ],
  fits: ['Nothing is flagged.'],
  'not-judged': [
    'Not assessable, not elicited in a state in which it cannot be expected, or at an age for which no chosen source gives an age.',
  ],
});

export const together = (n: Said): string =>
  `If ${n('TOGETHER')} or more reflexes are to be discussed at one visit (sides counted once), they are said together.`;

export const caps = {
  id: 'limits',
  title: 'Limits that keep a finding at “recheck”',
  lead: 'They apply to findings that are persisting, or expected and not elicited. Any one is enough, and they are listed in this order. None of them limits the grades given without limit above.',
  rule: 'Limit',
  basis: 'Basis',
};

export const CAP_ORDER = [
  'counted',
  'tells-little',
  'thin',
  'crying',
  'state-unknown',
  'tried-once',
] as const satisfies readonly Cap['code'][];

/** Each limit with its basis. */
export const capMeans = (
  n: Said,
): Readonly<Record<Cap['code'], { rule: string; basis: string }>> => ({
  counted: {
    rule: `The answer is common: ${n('COUNTED_INFANTS')} or more healthy infants within a month of this age were counted, and the lower 95 % bound of the share with this answer is ${n('COMMON_SHARE')} or more.`,
    basis: 'Published counts, all read, named beside the finding. Both limits are ours.',
  },
  'tells-little': {
    rule: 'Expected and not elicited, and not eliciting this reflex gives little information, since healthy infants may lack it.',
    basis:
      'Read or from memory: the page of each reflex says which, with sources. The rule is ours.',
  },
  thin: {
    rule: `Fewer than ${n('TWO_VOICES')} voices give the verdict, or all that give it are from memory.`,
    basis: 'Ours.',
  },
  crying: { rule: 'Persisting, and seen that day only in a crying infant.', basis: 'Ours.' },
  'state-unknown': {
    rule: 'Expected and not elicited, and the state of the infant was not recorded. Not where the other side responds.',
    basis: 'Ours.',
  },
  'tried-once': {
    rule: `Expected and not elicited, and tried fewer than ${n('TRIES')} times that day, unless it was not elicited on an earlier day too. Not for sucking with swallowing, nor where the other side responds.`,
    basis: 'Ours.',
  },
});

/** Rules that come with the limits and are no limits themselves. */
export const alsoLimits = (n: Said): readonly (readonly [rule: string, basis: string])[] => [
  [
    `A marked difference between the sides, at an age at which differences between the sides are common in healthy infants, is to be rechecked until it is seen on ${n('STAYS_DAYS')} days in a row.`,
    'Read or from memory: the page of each reflex says which, with sources. The rule is ours.',
  ],
  [
    'A milestone is to be rechecked after the 90th and discussed after the 99th percentile of its published window.',
    'Published windows (WHO 2006, read in the abstract). That these percentiles are the limits is ours.',
  ],
  [
    'Crawling on hands and knees that is not seen is to be rechecked at most.',
    'Published: 4.3 % of healthy children never crawled so (WHO 2006, read in the abstract).',
  ],
];

/** Where a published pathway asks earlier than we do. */
export const milestoneNote =
  'NICE NG127 (2019, read in two summaries) refers a child who does not sit without support by 8 months, corrected age. One of them also names walking alone by 15 months in girls and 18 months in boys. For sitting, and for walking in girls, that is earlier than the 99th percentile. Follow the local pathway where it asks earlier.';

export const today = {
  id: 'today',
  title: 'Reasons for “see a doctor today”',
  reason: 'Reason',
  basis: 'Basis',
  bases: {
    published: 'Published',
    ours: 'Ours. Nearest published pathway',
  } satisfies Readonly<Record<TodayBasis['basis'], string>>,
};

export const example = {
  id: 'example',
  title: 'An example to follow by hand',
  lead: 'A fictional response and two fictional sources. Both have it present by term. The first has it integrated between 4 and 6 months, the second between 6 and 8 months. At 5 months it is elicited, at 7 months it is not. For now, no child differs from both sources.',
};

const PARTS: Readonly<Record<Part, string>> = {
  before: 'before 5 months',
  between: 'from 5 to 7',
  after: 'after 7, or never',
};
export const partWords = (part: Part): string => PARTS[part];

export const exampleColumns = {
  part: 'Integrated',
  sources: 'Sources alone',
  first: 'Elicited at 5',
  second: 'Not elicited at 7',
  product: 'Product',
  share: 'Share',
  sum: 'Sum',
};

/** The steps of the example, in words. @param worked what the engine finds */
export function exampleSteps({ parts: found, total, states, dates }: Worked, n: Said): string[] {
  const [before, between] = found;
  const start = before!.share;
  const held = between!.share;
  const way = (0.5 - start) / held;
  return [
    'Sources alone: each source has half of the weight, spread evenly over its two months. So each of the four months from 4 to 8 has a quarter.',
    `Findings: a response that is present is missed with ${n('MISSED')}, one that is not present is imagined with ${n('IMAGINED')}. If it integrated before 5 months, eliciting it at 5 months was imagined.`,
    `Multiply the three numbers of each row. The products sum to ${fixed(total)}. Divided by this sum they are the shares.`,
    `At 7 months it has integrated with ${fixed(start)} + ${fixed(held)} = ${fixed(states.gone, 3)}, and is still present with ${fixed(states.there, 3)}.`,
    `The median date: (0.5 − ${fixed(start)}) / ${fixed(held)} = ${fixed(way, 2)} of the way from 5 to 7 months, which is ${fixed(dates.median, 2)} months. The same for 0.05 and 0.95 gives the interval from ${fixed(dates.low, 2)} to ${fixed(dates.high, 2)} months.`,
  ];
}

/** The same with children who differ from every source. */
export const exampleOdd = (n: Said, { dates }: Worked): string =>
  `A child may differ from every source with ${n('ODD')}. In a share of ${n('ODD_NEVER')} of these it never integrates, and in the rest it integrates at any day from day ${n('FIRST_DAY')} to day ${n('LAST_DAY')} of the axis. The sources keep ${number(1 - Number(n('ODD')))} of their weight. That it was present by term is taken as sure here. The median date is then ${fixed(dates.median, 2)} months, with an interval from ${fixed(dates.low, 2)} to ${Number.isFinite(dates.high) ? `${fixed(dates.high, 2)} months` : 'no date'}.`;

export const oddCaption = 'With children who differ from every source';
export const plainCaption = 'If no child differs from both sources';
export const cell = (value: number): string => fixed(value);

export const constants = {
  id: 'constants',
  title: 'Every constant',
  lead: '“Ours” is a choice that no source prescribes. The names are those in the program.',
  columns: { what: 'For', value: 'Value', unit: 'Unit', basis: 'Basis', name: 'Name' },
};

export const groups: Readonly<Record<ConstantGroup, string>> = {
  grades: 'Grades',
  today: 'Today',
  model: 'Progress of a response',
  orders: 'Sequences',
  lost: 'Seen before, not now; lost',
  fit: 'Best-fitting age',
  next: 'The next visit',
};

const UNITS: Readonly<Record<Exclude<ConstantUnit, 'axis-day'>, string>> = {
  probability: 'probability',
  share: 'share',
  'odds-ratio': 'odds ratio',
  days: 'days',
  minutes: 'minutes',
  months: 'months',
  'standard-deviations': 'standard deviations',
  count: 'number',
  steps: 'steps of strength',
};

/** The unit of a constant; of a day on the axis, also which age it is. */
export function unitWords({ unit, value }: Pick<ShownConstant, 'unit' | 'value'>): string {
  if (unit !== 'axis-day') return UNITS[unit];
  if (value === TERM_DAYS) return 'day on the axis: term';
  return value < TERM_DAYS
    ? `day on the axis: ${formatGestation(value)} of gestation`
    : `day on the axis: ${number(Math.round(toMonths(toAxisDay(value)) * 10) / 10)} months after term`;
}

const BASES: Readonly<Record<ConstantBasis, string>> = {
  ours: 'ours',
  'normal-table': 'published: standard table of the normal distribution',
  guideline: 'published: the guideline named under “see a doctor today”',
  'chi-squared-table': 'published: standard table of chi-squared, 1 degree of freedom',
};
export const basisWords = (basis: ConstantBasis): string => BASES[basis];

/** What each constant is for. */
export const constantWhat: Readonly<Record<ConstantName, string>> = {
  DISCUSS_SHARE: 'persisting, or expected and not elicited, is to be discussed from this share on',
  WATCH_SHARE: 'persisting, or expected and not elicited, is to be rechecked over this share',
  FIRM_SHARE: 'a verdict is firm if every source that gives an age gives it at least this',
  SPEAKS_AT_LEAST: 'a source that is less likely than this to give an age is silent',
  TWO_VOICES: 'a verdict on fewer voices is to be rechecked at most',
  COUNTED_INFANTS: 'healthy infants that must have been counted for a count to limit a grade',
  COMMON_SHARE: 'an answer is common if the lower 95 % bound of its share is at least this',
  NEAR_DAYS: 'how near in age a count must be',
  TRIES: 'tries on one day before a response counts as not elicited',
  WEAK_ESTABLISHED:
    'weak is to be rechecked if the mean probability of established is at least this',
  MARKED_STEPS: 'two sides that differ by so many steps differ markedly',
  MARKED_EXPECTATION:
    'a marked difference is to be discussed if the mean expectation is at least this',
  CREDIBLY_GONE:
    're-emerged is to be discussed from this probability that the response had integrated when it was not elicited',
  RECENT_DAYS:
    'days before a response that was not elicited, over which it is judged whether it had integrated',
  STAYS_DAYS: 'days in a row with the same side the stronger, from which a difference stays',
  EXPECTED_THERE: 'from this mean expectation on, the weaker side is the less expected',
  Z90: 'the 90th percentile of a milestone',
  Z99: 'the 99th percentile of a milestone',
  TOGETHER: 'reflexes to be discussed at one visit, from which they are said together',
  TODAY_LOST:
    'lost lifelong reactions, each tried twice, from which a doctor is to see the child today',
  TODAY_FEEDING_FROM: 'sucking and swallowing are expected of an alert infant from this age on',
  TODAY_FEEDING_UNTIL: 'and below this age: later the sucking reflex may have integrated',
  FIRST_DAY: 'first day of the axis on which events are placed',
  LAST_DAY: 'last day of the axis; later is never',
  ODD: 'a child differs from every source',
  ODD_NEVER: 'share of these children in whom the event never happens; the rest is uniform',
  MISSED: 'a response that is present is not elicited',
  MISSED_TELLS_LITTLE: 'the same for a reflex where not eliciting it gives little information',
  MILESTONE_MISSED: 'a milestone that was reached is not seen',
  IMAGINED: 'a response that is not present is taken as elicited',
  SHIFT_REACH: 'how far all visits may be shifted together by doubt in the dating',
  SHIFT_NODES: 'shifts that are computed',
  INTERVAL: 'what an interval holds; the rest is half on either side',
  NEVER_NO_DATE: 'from this probability of never on, no date is given for nine in ten',
  IN_ORDER_PROBABILITY: 'in order from this probability on, with the next',
  IN_ORDER_ODDS: 'in order from this odds ratio on',
  REVERSED_ODDS: 'reversed up to this odds ratio, with one of the next two',
  REVERSED_PROBABILITY: 'reversed if the probability of the order is under this',
  REVERSED_SOURCES: 'reversed if the sources alone gave the order at least this',
  AGAINST_ODDS: 'the visits contradict an order up to this odds ratio',
  SURE_SOURCES: 'the sources alone, if no child differs from all of them, are sure of an order',
  ODDS_FLOOR: 'probabilities are kept this far from 0 and 1, so that an odds ratio is finite',
  NOT_GONE: 'seen before and not now: the sources expect integration by this age with less',
  LOST_TOGETHER: 'so many at one visit are lost',
  LIFELONG: 'a reaction is lifelong if the sources say so with at least this',
  SEEN_AGAIN_DAYS: 'until the next visit, at the latest',
  DISCUSSED_AGAIN_DAYS: 'until the next visit after something to discuss, at the latest',
  WATCHED_AGAIN_DAYS: 'until the next visit after something to recheck, at the latest',
  USUAL_MONTHS: 'between two visits where nothing calls for less',
  FOLLOWED_UNTIL_MONTHS: 'after term, until a visit falls due by time alone',
  CORE_SIZE: 'reflexes in a core set for an age, at most',
  TEN_MINUTES: 'time for testing that is planned for',
  UPSETTING_MINUTES: 'added for a test that is likely to upset',
  ONE_STATION: 'of the information about an order, given by testing one of the two',
  FIT_FROM: 'first day considered',
  FIT_REFLEXES: 'reflexes that must be included',
  FIT_MILESTONES: 'milestones that must be included',
  FIT_WIDEST_MONTHS: 'the interval must be narrower',
  FIT_RELATIVE:
    'where an end of the axis cuts the interval off, its other end is where the likelihood is this share of its greatest',
  MODE_SHARE: 'a second peak has at least this share of the highest',
  MODE_RISE: 'and is so many times as high as the dip before it',
};
