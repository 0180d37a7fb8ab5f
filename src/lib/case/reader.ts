/** What reads plain values out of a record and gathers every problem it meets. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { Place, Problem, ProblemCode } from './problem.ts';
import { MAX_LABEL } from './shape.ts';

/** Gathers problems while a value is read, so that all are said at once. */
export class Reader {
  readonly problems: Problem[] = [];
  readonly #ids = new Set<string>();

  /** Notes a problem; the value that could not be read is undefined. */
  refuse(at: Place, problem: ProblemCode): undefined {
    this.problems.push({ ...problem, at });
  }

  date(text: string, at: Place): CivilDate | undefined {
    const date = parseCivil(text);
    if (!date) return this.refuse(at, { code: 'bad-date', text: text.slice(0, QUOTED) });
    return date < EARLIEST || date > LATEST ? this.refuse(at, { code: 'far-date', text }) : date;
  }

  /** Plain text up to a length. A tag in it is refused: a note is no page. */
  text(text: string, at: Place, limit: number): string {
    const markup = MARKUP.exec(text.slice(0, limit));
    if (markup) this.refuse(at, { code: 'markup', text: markup[0].slice(0, 40) });
    return this.words(text, at, limit);
  }

  /** Words typed where they are read: a tag in them is seen there as the letters it is made of. */
  words(text: string, at: Place, limit: number): string {
    if (text.length > limit) this.refuse(at, { code: 'too-long', limit });
    if (CONTROL.test(text)) this.refuse(at, { code: 'control' });
    return text;
  }

  /** One line of plain text. */
  line(text: string, at: Place): string {
    if (BREAK.test(text)) this.refuse(at, { code: 'control' });
    return this.text(text.trim(), at, MAX_LABEL);
  }

  /** The id of a visit or of a decision, which nothing else in the record has. */
  id(id: string, at: Place): string {
    if (!UUID.test(id)) this.refuse(at, { code: 'bad-id', text: id.slice(0, QUOTED) });
    else if (this.#ids.has(id)) this.refuse(at, { code: 'duplicate-id', id });
    this.#ids.add(id);
    return id;
  }

  oneOf<T extends string>(text: string, known: readonly T[]): T | undefined {
    return known.find((word) => word === text);
  }
}

/** A tag, or an address that runs script. "a < b and b > a" is none. */
const MARKUP = /<[/!]?[a-z][^<>]*>|<\s*script|javascript:\S/i;
/** Control characters but tab and line breaks, and marks that turn or hide text. */
const CONTROL =
  /(?![\t\r\n])\p{Cc}|\p{Cs}|[\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufffd]/u;
const BREAK = /[\r\n\t]/;

/** RFC 9562, in small letters, of any version: ours are of 4 and 5. */
const UUID = /^[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}$/;

/** Dates outside these years are a slip of the century. */
const EARLIEST = '1900-01-01';
const LATEST = '2199-12-31';
/** How much of a wrong word is said back. */
export const QUOTED = 60;
