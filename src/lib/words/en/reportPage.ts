/** English for the report as a sheet of paper: who, the plan, the signature, the signs. */
import type { CivilDate } from '../../age/civil.ts';
import { formatGestation } from '../../age/gestation.ts';
import { dateWords } from './ages.ts';

export const born = (on: CivilDate | undefined, gestation: number, dating: string): string =>
  `Born ${on ? `${dateWords(on)} ` : ''}at ${formatGestation(gestation)}; dated by: ${dating}.`;

export const seen = (when: string, examiners: readonly string[]): string =>
  `Seen ${when}${examiners.length > 0 ? ` by ${examiners.join(' and ')}` : ''}.`;

export const ages = (clocks: readonly string[]): string => `Age: ${clocks.join('; ')}.`;

export const others = 'Other findings';
export const plan = 'Plan';
export const nextAt = (when: string): string => `Next visit ${when} at the latest.`;
export const signs = 'Signs';
export const sources = 'Sources';
export const signature = 'Signature';
export const role = 'Name and role';
export const date = 'Date';
export const withCourse = 'With the course, on a second page';
