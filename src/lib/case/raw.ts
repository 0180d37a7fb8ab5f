/** A case written out: as the object that its file holds, and as the text of its file. */
import { formatGestation } from '../age/gestation.ts';
import type { Case } from './case.ts';
import { rawFollowUp } from './followUp.ts';
import { FORMAT, VERSION, type RawCase } from './shape.ts';

/** A case as the object its file holds. */
export function rawOf({ child, visits, ...followUp }: Case): RawCase {
  const { label, birth, datedBy, invented } = child;
  return {
    format: FORMAT,
    version: VERSION,
    child: {
      label,
      born: birth.born,
      ...(datedBy === 'due'
        ? { due: birth.due }
        : { gestation: formatGestation(birth.gestationalDays) }),
      dating: birth.dating,
      invented,
    },
    visits: visits.map(({ id, on, examiner, note, findings, milestones }) => ({
      id,
      on,
      examiner,
      note,
      findings: findings.map((finding) => ({ ...finding })),
      milestones: milestones.map((seen) => ({ ...seen })),
    })),
    ...rawFollowUp(followUp),
  };
}

/** The text of a file from the object that it holds. */
export const textOf = (raw: RawCase): string => `${JSON.stringify(raw, null, 2)}\n`;

/** A case as the text of its file. */
export const caseText = (record: Case): string => textOf(rawOf(record));
