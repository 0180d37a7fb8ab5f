/** English for a day on which more than one examiner saw a child: who recorded what, and what they agreed on. */
import type { Side } from '../../atlas/types.ts';
import type { Finding, Response } from '../../case/finding.ts';
import { responses } from './case.ts';

/** One test on one side, answered unlike by examiners of one day. */
export interface Differing {
  side: Side;
  answers: readonly { examiner: string; finding: Pick<Finding, 'response'> }[];
  agreed: Response | undefined;
}

/** An examiner without the name. */
export const numbered = (n: number): string => `examiner ${n}`;
export const differTitle = 'Where the examiners differ';

/** An examiner who left no name. */
export const NO_NAME = 'examiner not named';

const answersWords = ({ answers }: Differing): string =>
  answers
    .map(({ examiner, finding }) => `${examiner || NO_NAME} ${responses[finding.response]}`)
    .join(', ');

const agreedWords = ({ agreed }: Differing): string =>
  agreed ? ` Agreed: ${responses[agreed]}.` : '';

/** Each difference once; sides on which the same was said are told together. */
export function differSentences(differing: readonly Differing[]): string[] {
  const together = new Map<string, Side[]>();
  for (const one of differing) {
    const said = `${answersWords(one)}.${agreedWords(one)}`;
    together.set(said, [...(together.get(said) ?? []), one.side]);
  }
  return [...together].map(([said, sides]) => {
    const [side] = sides;
    const on = sides.length > 1 ? ' on both sides' : side === 'midline' ? '' : ` on the ${side}`;
    return `The examiners differ${on}: ${said}`;
  });
}

/** What was recorded, and what the examiners agreed on where that is judged in its place. */
export const responseWords = ({
  given,
  finding,
}: {
  given: Pick<Finding, 'response'>;
  finding: Pick<Finding, 'response'>;
}): string =>
  given.response === finding.response
    ? responses[given.response]
    : `${responses[given.response]} (agreed: ${responses[finding.response]})`;
