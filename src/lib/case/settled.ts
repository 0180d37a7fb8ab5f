/**
 * The record as it is judged: where the examiners of a day agreed on an answer, that one in place of each
 * examiner's own. An agreed answer on something that nobody recorded on its day changes nothing.
 */
import { agreedKey, type Agreed, type Case, type Visit } from './case.ts';
import type { Finding } from './finding.ts';

/** A finding with the answer that was agreed on; only of one that was not elicited are the tries told. */
function answered(finding: Finding, { response, state }: Agreed): Finding {
  const { reflex, side, note, variant, tries } = finding;
  return {
    ...{ reflex, side, response, state, note },
    ...(variant === undefined ? {} : { variant }),
    ...(tries === undefined || response !== 'not-elicited' ? {} : { tries }),
  };
}

/** Itself where nothing was agreed, and each of its visits in which nothing was. */
export function settled(record: Case): Case {
  if (record.agreed.length === 0) return record;
  const byKey = new Map(record.agreed.map((one) => [agreedKey(one), one]));
  const visits = record.visits.map((visit): Visit => {
    const { on } = visit;
    const findings = visit.findings.map((finding): Finding => {
      const one = byKey.get(agreedKey({ ...finding, on }));
      return one ? answered(finding, one) : finding;
    });
    const isOther = findings.some((finding, at) => finding !== visit.findings[at]);
    return isOther ? { ...visit, findings } : visit;
  });
  return { ...record, visits };
}
