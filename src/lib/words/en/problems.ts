/** English for every problem: the field, what is wrong, and how to correct it. */
import { formatGestation } from '../../age/gestation.ts';
import type { Place, Problem } from '../../case/problem.ts';

const FIELDS: Readonly<Record<string, string>> = {
  file: 'The file',
  label: 'Name or code',
  born: 'Birth date',
  gestation: 'Gestation at birth',
  due: 'Due date',
  dating: 'Dating method',
  on: 'Visit date',
  examiner: 'Examiner',
  note: 'Note',
  reflex: 'Reflex',
  side: 'Side',
  response: 'Response',
  state: 'State of the infant',
  variant: 'Variant',
  tries: 'Tries',
  lost: 'Lost',
  findings: 'Findings',
  milestones: 'Milestones',
  visits: 'Visits',
  child: 'Child',
  milestone: 'Milestone',
  seen: 'Seen',
  tags: 'Tags',
  question: 'Question to the team',
  decision: 'Decision',
  decisions: 'Decisions',
  decided: 'Date of the decision',
  familyLanguage: 'Language of the family’s page',
  pronoun: 'How the child is spoken of',
  calledName: 'Name used at home',
  clinicName: 'Name of the clinic',
  clinicPhone: 'Number of the clinic',
  familyChosen: 'Reflexes on the family’s page',
  familyEdit: 'Edited sentence of the family’s page',
  familyPages: 'Pages for the family',
  agreed: 'Agreed answer',
  who: 'Who',
  by: 'By when',
  sheet: 'Sheet for the visit',
};

/** Where it is: "Visit 2 (2026-05-18), finding 3 (moro), side". */
export function placeWords({ field, visit, finding }: Place): string {
  const name = FIELDS[field] ?? field;
  if (!visit && finding) {
    const of = `${FIELDS.agreed} ${finding.number}${finding.reflex ? ` (${finding.reflex})` : ''}`;
    return field === 'agreed' ? of : `${of}, ${name.toLowerCase()}`;
  }
  if (!visit) return name;
  const at = [`Visit ${visit.number}${visit.on ? ` (${visit.on})` : ''}`];
  if (finding) at.push(`finding ${finding.number}${finding.reflex ? ` (${finding.reflex})` : ''}`);
  return [...at, name.toLowerCase()].join(', ');
}

/** Kinds of values, for people. */
const KINDS: Readonly<Record<string, string>> = {
  Object: 'a group of named fields',
  Array: 'a list',
  string: 'text',
  boolean: 'true or false',
  number: 'a number',
};

const list = (words: readonly string[]): string => words.join(', ');

/** What is wrong and how to correct it, without the place. */
export function mendWords(problem: Problem): string {
  switch (problem.code) {
    case 'too-large':
      return `is about ${problem.megabytes} MB; a case file is at most ${problem.limitMegabytes} MB; choose a file that Tidemark saved.`;
    case 'read-only':
      return 'is kept by a newer Tidemark, and this one changes nothing; reload the page to get the newer one.';
    case 'blank':
      return 'is empty; copy or save it again.';
    case 'not-json':
      return 'is neither a case file nor a table of findings; choose a file that Tidemark saved, or a table saved as CSV with a row of column names above its rows of findings.';
    case 'cut-short':
      return 'ends in the middle, as if a copy was cut short, or something follows its end; copy or save it again, whole.';
    case 'not-ours':
      if (problem.kind === 'backup')
        return 'is a backup of everything, not one child; open it under Storage and backup.';
      if (problem.kind === 'talk') return 'is a talk, not a child; open it under Teach.';
      return 'is not a Tidemark case: "format" must be "tidemark-case"; choose a file that Tidemark saved.';
    case 'newer-version':
      return `was saved by a newer Tidemark (version ${problem.version}); update Tidemark to open it, the file is unchanged.`;
    case 'unknown-version':
      return `names version "${problem.version}"; write 1, or choose a file that Tidemark saved.`;
    case 'bad-id':
      return `"${problem.text}" is not an id; leave it as Tidemark saved it, or choose a file that Tidemark saved.`;
    case 'duplicate-id':
      return `has the id ${problem.id}, which another visit or decision has too; choose a file that Tidemark saved.`;
    case 'missing':
      return 'is missing; fill it in.';
    case 'wrong-type':
      return `is of the wrong kind; it should be ${KINDS[problem.expected] ?? problem.expected}.`;
    case 'empty':
      return 'is empty; give the child a code, such as a bird or a number (no real name is needed).';
    case 'too-long':
      return `is too long; keep it to ${problem.limit} characters.`;
    case 'too-many':
      return `holds too many entries; at most ${problem.limit} are taken.`;
    case 'markup':
      return `holds markup or script ("${problem.text}"); take it out, only plain text is kept.`;
    case 'control':
      return 'holds characters that cannot be seen, or a line break where none belongs; type it again.';
    case 'far-date':
      return `${problem.text} is outside the years 1900 to 2199; check the century.`;
    case 'bad-date':
      return /^\d{4}-\d\d-\d\d$/.test(problem.text)
        ? `"${problem.text}" is not a date that exists; write year-month-day, such as 2026-03-04.`
        : `"${problem.text}" cannot be read as a date; write year-month-day, such as 2026-03-04.`;
    case 'no-dating':
      return 'is needed to know the age: give the gestation (such as 33w1d) or the due date.';
    case 'gestation-form':
      return `"${problem.text}" is not understood; write weeks and days, such as 33w1d.`;
    case 'gestation-range':
      return `${formatGestation(Math.max(0, problem.gestationalDays))} is outside 22w0d to 44w6d; check weeks and days.`;
    case 'due-range':
      return problem.gestationalDays < 0
        ? `${problem.due} is more than 40 weeks after the birth on ${problem.born}; check both dates.`
        : `${problem.due} would mean birth at ${formatGestation(problem.gestationalDays)}, outside 22w0d to 44w6d; check the due date and the birth date.`;
    case 'due-contradicts':
      return `means birth at ${formatGestation(problem.byDue)}, but the gestation given is ${formatGestation(problem.byGestation)}; correct one, or leave one out.`;
    case 'unknown-dating':
      return `"${problem.text}" is not one of: ${list(problem.known)}; choose one of these.`;
    case 'exam-before-birth':
      return `${problem.on} is before the birth on ${problem.born}; check both dates.`;
    case 'unknown-reflex':
      return `"${problem.text}" is not a reflex of the atlas; ${problem.nearest ? `did you mean "${problem.nearest}"?` : 'choose one of its reflexes ("tidemark atlas" lists them).'}`;
    case 'unknown-milestone':
      return `"${problem.text}" is not one of: ${list(problem.known)}; choose one of these.`;
    case 'unknown-side':
    case 'unknown-response':
    case 'unknown-state':
    case 'unknown-word':
      return `"${problem.text}" is not one of: ${list(problem.known)}; choose one of these.`;
    case 'unknown-variant':
      return problem.known.length > 0
        ? `"${problem.text}" is not a variant of ${problem.reflex} with ages of its own; choose one of ${list(problem.known)}, or leave it out: the finding is then judged by all of them.`
        : `${problem.reflex} has no variants with ages of their own, and "${problem.text}" is named; leave it out.`;
    case 'tries-range':
      return `${problem.tries} is not a whole number from 1 to ${problem.most}; write how often it was tried.`;
    case 'tries-answered':
      return `more than one try goes with "not-elicited" only, and the response is "${problem.response}"; leave the tries out, or change the response.`;
    case 'lost-seen':
      return `${problem.milestone} cannot be both seen and lost at one visit; keep one.`;
    case 'no-such-side':
      return `"${problem.side}" is not a side of the ${problem.reflex}; record it as ${problem.has.join(' or ')}.`;
    case 'duplicate-finding':
      return `${problem.reflex} on the ${problem.side} is recorded twice at this visit; keep one.`;
    case 'duplicate-milestone':
      return `${problem.milestone} is recorded twice at this visit; keep one.`;
    case 'duplicate-visit':
      return `${problem.on} already has a visit${problem.examiner ? ` by ${problem.examiner}` : ' without an examiner'}; add to that visit, or name another examiner.`;
  }
}

/** One problem as a sentence that names the field and the correction. */
export const problemWords = (problem: Problem): string =>
  `${placeWords(problem.at)}: ${mendWords(problem)}`;
