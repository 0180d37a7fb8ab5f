/** Small invented records for tests: a child and visits, taken through the door. */
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import type { InfantState, Response } from '../../src/lib/case/finding.ts';
import { latest, OLDER_VERSION } from '../../src/lib/case/older.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { FORMAT } from '../../src/lib/case/shape.ts';
import { en } from '../../src/lib/words/en.ts';

/** A finding in short: reflex, side, response; where they matter, state, tries, and which variant was tested. */
export type ShortFinding = [
  reflex: string,
  side: string,
  response: Response,
  state?: InfantState,
  tries?: number | undefined,
  variant?: string | undefined,
];

export interface ShortVisit {
  on: string;
  examiner?: string;
  findings: ShortFinding[];
  milestones?: Record<string, boolean>;
  /** Milestones that the carer says are lost. */
  lost?: string[];
}

export function childCase(
  child: { born: string; gestation: string; dating?: string },
  visits: ShortVisit[],
): Case {
  const parsed = parseRaw(
    latest({
      format: FORMAT,
      version: OLDER_VERSION,
      child: { label: 'Kestrel', dating: 'unknown', invented: true, ...child },
      visits: visits.map(({ on, examiner = '', findings, milestones = {}, lost = [] }) => ({
        on,
        examiner,
        note: '',
        findings: findings.map(
          ([reflex, side, response, state = 'quiet-alert', tries, variant]) => ({
            reflex,
            side,
            response,
            state,
            note: '',
            ...(tries === undefined ? {} : { tries }),
            ...(variant === undefined ? {} : { variant }),
          }),
        ),
        milestones: Object.entries(milestones).map(([milestone, seen]) => ({
          milestone,
          seen,
          ...(lost.includes(milestone) ? { lost: true } : {}),
        })),
      })),
    }),
    ATLAS,
  );
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
  return parsed.value;
}
