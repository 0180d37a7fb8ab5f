/** A value held against a shape without a sentence for each of a million things that are wrong in it. */
import * as v from 'valibot';

/** In a file longer than this, in characters, what is wrong is said one thing at a time. */
const SAY_ALL = 200_000;

/** Reads a value that came out of a text of so many characters. */
export const shaped = <const S extends v.GenericSchema>(
  shape: S,
  value: unknown,
  length: number,
): v.SafeParseResult<S> => v.safeParse(shape, value, { abortEarly: length > SAY_ALL });
