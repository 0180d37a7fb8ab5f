/** English for answers: why one is right, by which sources, and what the figure says meanwhile. */
import { TERM_DAYS, toAxisDay, toMonths, type AxisDay } from '../../age/axis.ts';
import { addDays } from '../../age/civil.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { SourceCount } from '../../atlas/families.ts';
import type { LimbPattern, Reflex } from '../../atlas/types.ts';
import type { Phase } from '../../judge/phases.ts';
import type { AskedAge, Question, Rests } from '../question.ts';
import { dateWords, spanWords } from './ages.ts';
import { positions, voicesWords } from './atlas.ts';
import { momentWords, stimuli } from './body.ts';
import { verdictSentence } from './judge.ts';
import { nameOf, onSide, patternOf, stationWords, weeksWords } from './quiz.ts';

/** When something happens over all sources that date it; an open end is said as such. */
function happensWords({ from, to }: { from: number; to: number }): string {
  if (from === -Infinity && to === Infinity) return 'not dated more closely';
  if (from === -Infinity)
    return to <= TERM_DAYS ? 'by term' : `by ${spanWords(toAxisDay(to), toAxisDay(to))}`;
  return spanWords(from as AxisDay, to === Infinity ? null : (to as AxisDay));
}

const SAYS: Record<Phase, string> = {
  'not-yet': 'not present yet',
  emerging: 'emerging',
  established: 'present',
  integrating: 'integrating',
  integrated: 'integrated',
};

function countOf(ids: readonly string[], atlas: Atlas): SourceCount {
  const named = new Set(ids);
  const claims = [...atlas.claims.values()].flat().filter(({ source }) => named.has(source.id));
  return { sources: named.size, voices: new Set(claims.map(({ family }) => family)).size };
}

const bySources = (count: SourceCount): string =>
  count.sources === 1
    ? 'the one source that gives an age'
    : `all ${count.sources} sources that give an age, ${voicesWords(count)}`;

/** What the sources of one line say, without naming them: `Moro reflex: integrated in all 12 sources …`. */
export function restsWords(rests: Rests, atlas: Atlas): string {
  const { happens, says, sources } = rests;
  if (happens) return `${stationWords(happens.station, atlas)}: ${happensWords(happens)}`;
  const name = nameOf(rests.of, atlas);
  return says ? `${name}: ${SAYS[says]} in ${bySources(countOf(sources, atlas))}` : name;
}

/** Sources by their short names, some of which hold a comma. */
export const sourcesWords = (ids: readonly string[], atlas: Atlas): string =>
  ids.map((id) => atlas.sources.get(id)?.short ?? id).join('; ');

/** Every source an answer rests on, by its short name. */
export const sourcesShort = ({ why }: Question, atlas: Atlas): string[] =>
  why.rests.flatMap(({ sources }) => sources.map((id) => sourcesWords([id], atlas)));

function shown(reflex: Reflex | undefined, variant: string, side: 'left' | 'right'): string {
  const pattern = patternOf(reflex, variant);
  if (!reflex || !pattern) return '';
  const moments = (pattern.phases ?? [pattern]).map((moment) => onSide(momentWords(moment), side));
  return `${reflex.name}: ${moments.join('; then ')}.`;
}

const correctedTo = (age: AskedAge): string => {
  const months = Math.round(toMonths(toAxisDay(age.axisDay)) * 10) / 10;
  const early = Math.round(TERM_DAYS - (age.bornDays ?? TERM_DAYS));
  return `Born ${weeksWords(early)} early, the infant has a corrected age of ${months} months, and that age counts. The due date, from an early scan, may be off by a week, and the answer is still right.`;
};

/** Why the right answer is right, in sentences. */
export function whyWords({ stem, choices, right, why }: Question, atlas: Atlas): string[] {
  const answer = choices[right];
  switch (stem.kind) {
    case 'first':
    case 'next':
      return [
        'All sources that give its age have it completed before any has one of the later ones begin.',
      ];
    case 'order':
      return [
        'All sources that give the age of a step have it completed before any has the next one begin.',
      ];
    case 'phase':
      return ['All sources that give an age agree on this.'];
    case 'born':
      return [correctedTo(stem.age)];
    case 'verdict': {
      if (answer?.is !== 'verdict') return [];
      const { sources, voices } = countOf(why.rests[0]?.sources ?? [], atlas);
      const said = verdictSentence(answer.verdict, stem.response, {
        agree: sources,
        of: sources,
        voices: { agree: voices, of: voices },
      });
      return stem.age.bornDays === null ? [said] : [correctedTo(stem.age), said];
    }
    case 'name':
      return [shown(atlas.reflexes.get(stem.reflex), stem.variant, stem.side)];
    case 'limb':
      return [shown(atlas.reflexes.get(stem.reflex), stem.variant, stem.side)];
    case 'does':
      return [
        ...(answer?.is === 'reflex' ? [shownIn(atlas.reflexes.get(answer.reflex))] : []),
        'In none of the others is it seen at any moment.',
      ];
    case 'apart': {
      const [a, b] = [atlas.reflexes.get(stem.a), atlas.reflexes.get(stem.b)];
      if (!a || !b || answer?.is !== 'aspect') return [];
      if (answer.aspect === 'stimulus')
        return [`${a.name}: ${stimuli[a.stimulus]}. ${b.name}: ${stimuli[b.stimulus]}.`];
      if (answer.aspect === 'position')
        return [`${a.name}: ${positions[a.position]}. ${b.name}: ${positions[b.position]}.`];
      return [shownIn(a), shownIn(b)];
    }
    case 'arithmetic': {
      const early = TERM_DAYS - stem.gestationalDays;
      const due = addDays(stem.born, early);
      const first = `40w0d less ${formatGestation(stem.gestationalDays)} is ${weeksWords(early)}, so the infant was due on ${dateWords(due)}.`;
      if (stem.asks === 'due' || answer?.is !== 'days') return [first];
      return stem.asks === 'corrected'
        ? [first, `From then to ${dateWords(stem.on)} it is ${weeksWords(answer.days)}.`]
        : [
            `From birth to ${dateWords(stem.on)} it is ${weeksWords(answer.days - stem.gestationalDays)}; with the ${weeksWords(stem.gestationalDays)} before birth, ${weeksWords(answer.days)}.`,
          ];
    }
  }
}

/** Every variant of a response, limb by limb. */
const shownIn = (reflex: Reflex | undefined): string =>
  reflex ? shown(reflex, reflex.patterns[0]?.variant ?? '', 'left') : '';

/** What the figure's player says while the answer is not to be given away. */
export function figureWords(reflex: Reflex, pattern: LimbPattern, side: 'left' | 'right') {
  const phases = pattern.phases ?? [];
  const names = ['Rest', 'Stimulus', 'Response'];
  return {
    controls: 'The moments of the response',
    play: 'Play',
    hold: 'Pause',
    name: (moment: number): string => names[moment] ?? 'Then',
    describe: (moment: number): string => {
      if (moment === 0) return `At rest: an infant ${positions[reflex.position]}.`;
      if (moment === 1) return `The stimulus: ${stimuli[reflex.stimulus]}.`;
      return `The response: ${onSide(momentWords(phases[moment - 2] ?? pattern), side)}.`;
    },
  };
}
