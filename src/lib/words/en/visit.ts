/** English for what a whole visit says, beyond its single findings: what should not wait comes first. */
import type { Atlas } from '../../atlas/atlas.ts';
import type { JudgedVisit } from '../../judge/judge.ts';
import type { Fit, FitKind } from '../../judge/reading/fit.ts';
import { BY_DATE } from './ages.ts';
import { fitWords } from './inferred.ts';
import {
  attentions,
  milestoneSentence,
  patternSentence,
  todaySentence,
  togetherSentence,
} from './judge.ts';

const FITTED: Readonly<Record<FitKind, string>> = {
  primitive: 'transient responses',
  postural: 'lifelong responses',
  milestones: 'milestones',
};

/** One best-fitting age as a sentence; undefined where it is not shown. */
const fitSentence = (fit: Fit): string | undefined =>
  fit.hidden === null
    ? `The findings of ${fit.takingPart} ${FITTED[fit.kind]} fit best at ${fitWords(fit)}.`
    : undefined;

export const FIT_CAUTION =
  'The best-fitting age reads the sources and takes the responses as independent, so its range is too narrow. It is not the developmental age of a normed test.';

export function visitSentences(
  {
    today,
    together,
    pattern,
    milestones,
  }: Pick<JudgedVisit, 'today' | 'together' | 'pattern' | 'milestones'>,
  fits: readonly Fit[],
  atlas: Atlas,
  when = BY_DATE,
): string[] {
  const nameOf = (id: string): string => atlas.reflexes.get(id)?.short ?? id;
  const sides = patternSentence(pattern);
  const fitting = fits.flatMap((fit) => fitSentence(fit) ?? []);
  return [
    ...today.map(todaySentence),
    ...(together.length > 0 ? [togetherSentence(together.map(nameOf))] : []),
    ...(sides ? [sides] : []),
    ...milestones
      .filter(({ attention }) => attention !== 'fits' && attention !== 'not-judged')
      .map(
        (one) =>
          `${one.milestone.short} (${attentions[one.attention]}): ${milestoneSentence(one, when)}`,
      ),
    ...fitting,
    ...(fitting.length > 0 ? [FIT_CAUTION] : []),
  ];
}
