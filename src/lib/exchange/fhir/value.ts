/** Looking into a value of which nothing is known: a part that is not of the kind asked for is not there. */

export type Fields = Readonly<Record<string, unknown>>;

export const fieldsOf = (value: unknown): Fields | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Fields)
    : undefined;

/** A field of an object itself, never one it inherits. */
export const at = (value: unknown, name: string): unknown => {
  const fields = fieldsOf(value);
  return fields && Object.hasOwn(fields, name) ? fields[name] : undefined;
};

export const textAt = (value: unknown, name: string): string | undefined => {
  const text = at(value, name);
  return typeof text === 'string' ? text : undefined;
};

export const listAt = (value: unknown, name: string): readonly unknown[] => {
  const list = at(value, name);
  return Array.isArray(list) ? (list as unknown[]) : [];
};

/** The code of a concept in a code system; undefined when it names none. */
export const codeIn = (concept: unknown, system: string): string | undefined =>
  listAt(concept, 'coding')
    .filter((coding) => textAt(coding, 'system') === system)
    .map((coding) => textAt(coding, 'code'))
    .find((code) => code !== undefined);

/** A concept as words, for saying what was met. */
export const wordsOf = (concept: unknown): string | undefined =>
  textAt(concept, 'text') ??
  listAt(concept, 'coding')
    .map((coding) => textAt(coding, 'display') ?? textAt(coding, 'code'))
    .find((words) => words !== undefined);

/** Whether a value is nested deeper than a limit. It does not call itself, so no depth can exhaust it. */
export function isDeeper(value: unknown, limit: number): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > limit) return true;
    level = level.flatMap((one) =>
      typeof one === 'object' && one !== null ? (Object.values(one) as unknown[]) : [],
    );
  }
  return false;
}
