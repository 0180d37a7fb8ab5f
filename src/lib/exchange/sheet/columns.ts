/** Which column of a sheet holds what: guessed from its names, and changed by the reader. */

export const FIELDS = [
  'reflex',
  'side',
  'response',
  'date',
  'child',
  'examiner',
  'state',
  'note',
  'born',
  'gestation',
  'due',
] as const;

export type SheetField = (typeof FIELDS)[number];

/** Without these nothing can be read. */
const NEEDED: readonly SheetField[] = ['reflex', 'response', 'date'];

/** What the name of a column mostly says where each reflex has one. */
const IN_NAMES: readonly SheetField[] = ['reflex', 'side', 'response'];

/** What a column may hold where each row is a visit; a side is the row's where no name says it. */
export const VISIT_FIELDS: readonly SheetField[] = [
  ...FIELDS.filter((field) => !IN_NAMES.includes(field)),
  'side',
];

/** A field to the number of its column, counted from 0. */
export type Columns = Readonly<Partial<Record<SheetField, number>>>;

/** Words of a column's name, in the order in which they are believed. Common practice, no source. */
const WORDS: Readonly<Record<SheetField, readonly string[]>> = {
  reflex: ['reflex', 'reaction', 'test', 'item', 'sign'],
  side: ['side', 'laterality', 'left/right', 'l/r'],
  response: ['response', 'result', 'finding', 'answer', 'value'],
  date: ['visit_date', 'date of visit', 'visit date', 'exam date', 'date of exam', 'seen', 'date'],
  child: ['child', 'label', 'patient', 'infant', 'baby', 'code', 'id'],
  examiner: ['examiner', 'therapist', 'seen by', 'examined by', 'by'],
  state: ['state', 'behavioural state', 'alertness'],
  note: ['note', 'notes', 'comment', 'comments', 'remark', 'remarks'],
  born: ['born', 'birth date', 'date of birth', 'birthdate', 'dob', 'birth'],
  gestation: ['gestation_at_birth', 'gestation at birth', 'gestational age', 'gestation', 'ga'],
  due: ['due date', 'due', 'expected date of delivery', 'edd'],
};

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[\s_.:-]+/g, ' ')
    .trim();

/** How well a name fits a field: whole first, then as a word in it. */
function fit(name: string, field: SheetField): number {
  const said = plain(name);
  const words = WORDS[field].map(plain);
  const whole = words.indexOf(said);
  if (whole >= 0) return 100 - whole;
  const within = words.findIndex((word) => word.length > 2 && ` ${said} `.includes(` ${word} `));
  return within >= 0 ? 50 - within : 0;
}

/** A column for each field, each column once, the best fit first; columns that are taken already are none. */
export function guessColumns(
  header: readonly string[],
  fields: readonly SheetField[] = FIELDS,
  already: readonly number[] = [],
): Columns {
  const fits = fields
    .flatMap((field) => header.map((name, column) => ({ field, column, score: fit(name, field) })))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
  const chosen: Partial<Record<SheetField, number>> = {};
  const taken = new Set(already);
  for (const { field, column } of fits) {
    if (chosen[field] !== undefined || taken.has(column)) continue;
    chosen[field] = column;
    taken.add(column);
  }
  return chosen;
}

/** The fields that have no column yet, of those without which nothing can be read. */
export const lacking = (columns: Columns, fields: readonly SheetField[] = FIELDS): SheetField[] =>
  NEEDED.filter((field) => fields.includes(field) && columns[field] === undefined);
