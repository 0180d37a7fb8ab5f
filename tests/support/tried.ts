/**
 * What a record says beside an answer: how often a missing one was tried, which variant was tested, and what a
 * carer says is lost.
 */
import fc from 'fast-check';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { MOST_TRIES } from '../../src/lib/case/finding.ts';

/** A finding, of which a missing one may have been tried more than once. */
export const tried = <F extends { response: string }>(
  finding: F,
): fc.Arbitrary<F & { tries?: number }> =>
  finding.response === 'not-elicited'
    ? fc.oneof(
        fc.constant(finding),
        fc.integer({ min: 2, max: MOST_TRIES }).map((tries) => ({ ...finding, tries })),
      )
    : fc.constant(finding);

/** A finding, which may say its variant where the reflex has some that are dated apart. */
export const ofVariant = <F extends { reflex: string }>(
  finding: F,
): fc.Arbitrary<F & { variant?: string }> =>
  fc
    .constantFrom(undefined, ...(ATLAS.variants.get(finding.reflex) ?? []))
    .map((variant) => (variant === undefined ? finding : { ...finding, variant }));

/** A milestone, of which one that is not seen may be lost. */
export const maybeLost = <M extends { seen: boolean }>(
  milestone: M,
): fc.Arbitrary<M & { lost?: true }> =>
  milestone.seen
    ? fc.constant(milestone)
    : fc.constantFrom(milestone, { ...milestone, lost: true as const });
