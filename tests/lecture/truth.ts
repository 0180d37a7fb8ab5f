/** Whether a choice answers a question, found out from printed figures and limb patterns alone. */
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { LimbPattern, Station } from '../../src/lib/atlas/types.ts';
import type { AskedAge, Choice, Question } from '../../src/lib/words/question.ts';
import { rowsOf, said, type Said } from './printed.ts';

/** `right`, `wrong`, or `open`: it could be argued with. */
export type Truth = 'right' | 'wrong' | 'open';

const NEAR = [-6.5, 0, 6.5];
const MONTH = 365.25 / 12;

/** The day an asked age means, counted anew: days since birth by the mean month, less the weeks too early. */
function dayOf({ unit, value, bornDays }: AskedAge): number {
  if (unit === 'weeks') return value * 7;
  return (bornDays ?? 280) + value * MONTH;
}

/** What all the sources that speak say of a reflex around a day; null where they are not of one mind. */
function allSay(reflex: string, day: number, chosen?: string): Set<Said> {
  return new Set(NEAR.flatMap((off) => said(reflex, day + off, chosen).map(({ says }) => says)));
}

type Span = [number, number];

/** All dates of an event over the chosen sources, as [first, last] for each. */
function datesOf(station: Station, chosen?: string): Span[] {
  if (station.event === 'reached') {
    const { p1Months, p99Months } = ATLAS.milestones.get(station.milestone)!.window!;
    return [[280 + p1Months * MONTH, 280 + p99Months * MONTH]];
  }
  const reflexes =
    station.event !== 'sets-apart'
      ? [station.reflex]
      : // known to the trade: the asymmetrical tonic neck response, and the symmetrical one; more may join
        [...ATLAS.reflexes.values()]
          .filter((r) => r.patterns.every((p) => apartIn(p) === station.apart))
          .map((r) => r.id);
  return reflexes
    .flatMap(rowsOf)
    .filter((row) => chosen === undefined || row.source === chosen)
    .flatMap((row) =>
      station.event === 'integrates' ? (row.goes ? [row.goes] : []) : row.comes ? [row.comes] : [],
    );
}

function apartIn({ armL, armR, legL, legR, phasesRepeat }: LimbPattern): string | undefined {
  if (phasesRepeat) return undefined;
  if (armL !== armR) return armL !== 'none' && armR !== 'none' ? 'arms-from-each-other' : undefined;
  return armL !== 'none' && legL === legR && legL !== 'none' && legL !== armL
    ? 'arms-from-legs'
    : undefined;
}

const isBefore = (a: Station, b: Station, chosen?: string): boolean => {
  const [as, bs] = [datesOf(a, chosen), datesOf(b, chosen)];
  return (
    as.length > 0 && bs.length > 0 && as.every(([, end]) => bs.every(([begin]) => end <= begin))
  );
};

const verdictsOf = (elicited: boolean): Record<Said, string> =>
  elicited
    ? {
        'not-yet': 'early',
        emerging: 'fits',
        established: 'fits',
        integrating: 'closing',
        integrated: 'persisting',
      }
    : {
        'not-yet': 'fits',
        emerging: 'may-still-appear',
        established: 'missing',
        integrating: 'fits',
        integrated: 'fits',
      };

const PAIR = {
  arms: ['armL', 'armR'],
  legs: ['legL', 'legR'],
  hands: ['handL', 'handR'],
  feet: ['footL', 'footR'],
} as const;

/** The tokens of one part of a pattern, as one text; with left and right exchanged where wished. */
function tokensOf(pattern: LimbPattern, part: string, mirrored: boolean): string {
  const pair = PAIR[part as keyof typeof PAIR] as
    readonly [keyof LimbPattern, keyof LimbPattern] | undefined;
  if (!pair) {
    const token = pattern[part as 'head'];
    return mirrored && /left|right/.test(token)
      ? token.replace(/left|right/, (s) => (s === 'left' ? 'right' : 'left'))
      : token;
  }
  const of = (limb: keyof LimbPattern): string => {
    const also = pattern.also?.[limb as 'armL'] ?? [];
    return (
      [pattern[limb as 'armL'], ...also]
        .filter((t) => t !== 'none')
        .sort()
        .join('+') || 'none'
    );
  };
  return (mirrored ? [of(pair[1]), of(pair[0])] : [of(pair[0]), of(pair[1])]).join(' / ');
}

/** A doing sought among the raw tokens of every moment. */
function seen(reflex: string, doing: string): boolean {
  const [part = '', word = ''] = doing.split(' ');
  const moments = ATLAS.reflexes.get(reflex)!.patterns.flatMap((p) => p.phases ?? [p]);
  const TOKENS: Record<string, string[]> = {
    bend: ['flexed'],
    straighten: ['extended'],
    spread: ['abducted'],
    'close-in': ['adducted'],
    open: ['open'],
    close: ['closed'],
    fan: ['open'],
    curl: ['closed'],
    turns: ['turned-left', 'turned-right'],
    bends: ['flexed'],
    lifts: ['extended'],
    tilts: ['tilted-left', 'tilted-right'],
    straightens: ['extended'],
    curves: ['curved-left', 'curved-right'],
  };
  return moments.some((moment) => {
    const texts = tokensOf(moment as LimbPattern, part, false).split(' / ');
    if (word === 'unlike')
      return texts.length === 2 && texts[0] !== texts[1] && !texts.includes('none');
    return texts.flatMap((t) => t.split('+')).some((token) => TOKENS[word]!.includes(token));
  });
}

function aspectDiffers(a: string, b: string, aspect: string): boolean | undefined {
  const [x, y] = [ATLAS.reflexes.get(a)!, ATLAS.reflexes.get(b)!];
  if (aspect === 'stimulus' || aspect === 'position') return x[aspect] !== y[aspect];
  const of = (p: LimbPattern, mirrored: boolean) =>
    aspect === 'face' ? (p.face ?? 'none') : tokensOf(p, aspect, mirrored);
  const pairs = x.patterns.flatMap((p) =>
    y.patterns.map((q) => of(p, false) === of(q, false) || of(p, false) === of(q, true)),
  );
  return pairs.every((same) => same) ? false : pairs.some((same) => same) ? undefined : true;
}

/** How true a choice is as the answer to its question. */
export function truthOf(question: Question, choice: Choice, chosen?: string): Truth {
  const { stem } = question;
  const sure = (isRight: boolean): Truth => (isRight ? 'right' : 'wrong');
  switch (stem.kind) {
    case 'phase':
    case 'born': {
      if (choice.is !== 'reflex') return 'open';
      const all = allSay(choice.reflex, dayOf(stem.age), chosen);
      const [only] = all;
      if (all.size !== 1 || only === 'emerging' || only === 'integrating') return 'open';
      return sure(only === stem.phase);
    }
    case 'verdict': {
      if (choice.is !== 'verdict') return 'open';
      const meant = verdictsOf(stem.response === 'elicited');
      const all = new Set(
        [...allSay(stem.reflex, dayOf(stem.age), chosen)].map((one) => meant[one]),
      );
      return all.size === 1 ? sure(all.has(choice.verdict)) : 'open';
    }
    case 'first':
    case 'next': {
      if (choice.is !== 'station') return 'open';
      const others = question.choices.flatMap((c) =>
        c.is === 'station' && c !== choice ? [c.station] : [],
      );
      const day = stem.kind === 'next' ? dayOf(stem.age) : -Infinity;
      const dates = (s: Station): Span[] => datesOf(s, chosen);
      const over = (s: Station): boolean => dates(s).every(([, end]) => end <= day);
      if (over(choice.station)) return 'wrong';
      const ahead = others.filter((s) => !over(s));
      if (ahead.every((s) => isBefore(choice.station, s, chosen)))
        return dates(choice.station).every(([begin]) => begin >= day) ? 'right' : 'open';
      return ahead.some((s) => isBefore(s, choice.station, chosen)) ? 'wrong' : 'open';
    }
    case 'order': {
      if (choice.is !== 'stations') return 'open';
      const steps = choice.stations.slice(1).map((s, i) => [choice.stations[i]!, s] as const);
      if (steps.every(([a, b]) => isBefore(a, b, chosen))) return 'right';
      return steps.some(([a, b]) => isBefore(b, a, chosen)) ? 'wrong' : 'open';
    }
    case 'name':
      return sure(choice.is === 'reflex' && choice.reflex === stem.reflex);
    case 'limb': {
      if (choice.is !== 'act') return 'open';
      const pattern = ATLAS.reflexes
        .get(stem.reflex)!
        .patterns.find((p) => p.variant === stem.variant)!;
      const text = (tokens: readonly string[]): string => tokens.join('+') || 'none';
      const { left, right } = choice.act;
      const given = right === null ? text(left) : `${text(left)} / ${text(right)}`;
      return sure(given === tokensOf(pattern, stem.part, stem.side === 'right'));
    }
    case 'does':
      return choice.is === 'reflex' ? sure(seen(choice.reflex, stem.doing)) : 'open';
    case 'apart': {
      if (choice.is !== 'aspect') return 'open';
      const differs = aspectDiffers(stem.a, stem.b, choice.aspect);
      return differs === undefined ? 'open' : sure(differs);
    }
    case 'arithmetic': {
      const day = (iso: string): number => Date.parse(`${iso}T00:00Z`) / 86_400_000;
      const since = day(stem.on) - day(stem.born);
      const want = {
        corrected: since - (280 - stem.gestationalDays),
        postmenstrual: since + stem.gestationalDays,
      };
      if (stem.asks === 'due')
        return sure(
          choice.is === 'date' && day(choice.on) - day(stem.born) === 280 - stem.gestationalDays,
        );
      return sure(choice.is === 'days' && choice.days === want[stem.asks]);
    }
  }
}
