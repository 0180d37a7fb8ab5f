/**
 * The record as it is judged: where the examiners of a day agreed on an answer, that one in place of each
 * examiner's own. An agreed answer on something that nobody recorded on its day changes nothing.
 */
import { agreedKey, type Case, type Visit } from './case.ts';
import type { Finding } from './finding.ts';

/** Itself where nothing was agreed, and each of its visits in which nothing was. */
export function settled(record: Case): Case {
  if (record.agreed.length === 0) return record;
  const byKey = new Map(record.agreed.map((one) => [agreedKey(one), one]));
  const visits = record.visits.map((visit): Visit => {
    let isOther = false;
    const findings = visit.findings.map((finding): Finding => {
      const one = byKey.get(agreedKey({ ...finding, on: visit.on }));
      if (!one) return finding;
      isOther = true;
      const { tries: _, ...rest } = finding;
      const { response, state } = one;
      return { ...(response === 'not-elicited' ? finding : rest), response, state };
    });
    return isOther ? { ...visit, findings } : visit;
  });
  return { ...record, visits };
}
