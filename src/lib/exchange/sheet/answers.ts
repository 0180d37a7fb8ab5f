/** A sheet with a row for each visit: which of its columns hold the answers of which reflex. */
import { guessColumns, VISIT_FIELDS, type Columns } from './columns.ts';
import { guessValue, type FindReflex, type SheetSide } from './values.ts';

/** A column whose cells are the responses of one reflex. */
export interface Answers {
  /** Counted from 0. */
  column: number;
  reflex: string;
  /** Undefined where the column says none: the row may, or the reflex has only one. */
  side: SheetSide | undefined;
}

export const SHAPES = ['finding', 'visit'] as const;
/** What a row is: one finding, or a visit with a column for each reflex. */
export type SheetShape = (typeof SHAPES)[number];

/** Words beside a side that say nothing more. */
const FILLING = new Set(['side', 'sides', 'and']);

/** The parts of a column's name; `MoroL` has two. */
const partsOf = (name: string): string[] =>
  name
    .replaceAll(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .split(/[\s_.,:;/+&()[\]-]+/)
    .filter((part) => part !== '');

/** One side, or both where left and right are named; undefined where they cannot be meant together. */
function oneSide(sides: ReadonlySet<SheetSide>): SheetSide | undefined {
  const [first] = sides;
  if (sides.size <= 1) return first;
  return sides.size === 2 && sides.has('left') && sides.has('right') ? 'both' : undefined;
}

/** The reflex that a name surely means, and the side that stands before, after or in it. */
function named(name: string, findReflex: FindReflex): Omit<Answers, 'column'> | undefined {
  const whole = findReflex(name);
  if (whole !== undefined) return { reflex: whole, side: undefined };
  const sides = new Set<SheetSide>();
  const rest: string[] = [];
  for (const part of partsOf(name)) {
    const side = guessValue('side', part, findReflex);
    if (side !== undefined) sides.add(side as SheetSide);
    else if (!FILLING.has(part.toLowerCase())) rest.push(part);
  }
  const reflex = findReflex(rest.join(' '));
  const side = oneSide(sides);
  if (reflex === undefined || (sides.size > 0 && side === undefined)) return undefined;
  return { reflex, side };
}

/** The columns whose names are surely those of reflexes, in their order. */
export const guessAnswers = (header: readonly string[], findReflex: FindReflex): Answers[] =>
  header.flatMap((name, column) => {
    const answers = named(name, findReflex);
    return answers ? [{ column, ...answers }] : [];
  });

/** The fields of a visit in the columns that hold no answers. */
export const guessVisitColumns = (
  header: readonly string[],
  answers: readonly Answers[],
): Columns =>
  guessColumns(
    header,
    VISIT_FIELDS,
    answers.map(({ column }) => column),
  );

/** What a row is: a visit where columns are called by reflexes and none is for the reflex or its response. */
export function guessShape(header: readonly string[], findReflex: FindReflex): SheetShape {
  const answers = guessAnswers(header, findReflex);
  const { reflex, response } = guessColumns(
    header,
    undefined,
    answers.map(({ column }) => column),
  );
  const isLong = reflex !== undefined && response !== undefined;
  return answers.length > 0 && !isLong ? 'visit' : 'finding';
}
