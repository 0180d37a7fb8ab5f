/**
 * Case files of version 1, whose visits and decisions have no ids. They are given ids that follow from
 * what tells them apart there, so that every machine that reads one file finds the same.
 */
import { v5 } from 'uuid';
import * as v from 'valibot';
import {
  caseFields,
  decisionFields,
  VERSION,
  visitFields,
  type RawCase,
  type RawDecision,
  type RawVisit,
} from './shape.ts';

export const OLDER_VERSION = 1;

export const olderShape = v.object({
  ...caseFields,
  version: v.literal(OLDER_VERSION),
  visits: v.array(v.object(visitFields)),
  decisions: v.optional(v.array(v.object(decisionFields))),
});

/** A case as a file of version 1 holds it. */
export type OlderCase = v.InferOutput<typeof olderShape>;

/** A part that has an id or is to be given one. */
type Maybe<T extends { id: string }> = Omit<T, 'id'> & { id?: string | undefined };

/** A case in which some visits and decisions have no ids. */
interface PartlyNamed extends Omit<OlderCase, 'visits' | 'decisions'> {
  visits: readonly Maybe<RawVisit>[];
  decisions?: readonly Maybe<RawDecision>[] | undefined;
}

/** Drawn at random once (RFC 9562): it keeps these ids apart from everybody else's. */
const SPACE = '30c2cafa-21bf-440c-9af8-e5328804d9bf';

/** Each with its id, or with one of what it is named by; of those that share their names, by their order too. */
function withIds<T extends { id?: string | undefined }>(
  list: readonly T[],
  namesOf: (one: T) => readonly string[],
): (T & { id: string })[] {
  const met = new Map<string, number>();
  return list.map((one) => {
    const name = JSON.stringify(namesOf(one));
    const nth = met.get(name) ?? 0;
    met.set(name, nth + 1);
    return { ...one, id: one.id ?? v5(JSON.stringify([name, nth]), SPACE) };
  });
}

/**
 * The same case as version 2 holds it.
 * @param of the id under which the case is kept; a file that was never taken in has none, and the
 *   child's label and day of birth take its place
 */
export function latest(raw: RawCase | PartlyNamed, of?: string): RawCase {
  if (raw.version === VERSION) return raw;
  const { visits: bare, decisions, family, ...rest } = raw;
  const name = of ?? JSON.stringify([raw.child.label.trim(), raw.child.born]);
  const visits = withIds(bare, ({ on, examiner }) => [name, 'visit', on, examiner.trim()]);
  // pages were named by the date and the examiner of their visit
  const ids = new Map(visits.map(({ id, on, examiner }) => [`${on} ${examiner.trim()}`, id]));
  return {
    ...rest,
    version: VERSION,
    visits,
    ...(decisions
      ? {
          decisions: withIds(decisions, ({ on, text, who }) => [
            ...[name, 'decision'],
            ...[on, text.trim(), who.trim()],
          ]),
        }
      : {}),
    ...(family
      ? {
          family: {
            ...family,
            pages: family.pages.map((page) => ({
              ...page,
              visit: ids.get(page.visit) ?? page.visit,
            })),
          },
        }
      : {}),
  };
}
