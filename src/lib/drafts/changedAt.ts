/** Where two states of a visit differ: the finding that came, went or was changed. */
import type { RawVisit } from '../case/shape.ts';
import type { Place } from './recording.ts';

/** The first place at which a finding differs; undefined where the findings are the same. */
export function changedAt(before: RawVisit, after: RawVisit): Place | undefined {
  const text = (visit: RawVisit): Map<string, string> =>
    new Map(
      visit.findings.map((finding) => [
        `${finding.reflex} ${finding.side}`,
        JSON.stringify(finding),
      ]),
    );
  const [was, is] = [text(before), text(after)];
  const found = [...after.findings, ...before.findings].find(({ reflex, side }) => {
    const key = `${reflex} ${side}`;
    return was.get(key) !== is.get(key);
  });
  return found && ({ id: found.reflex, side: found.side } as Place);
}
