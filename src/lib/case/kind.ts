/** Which of Tidemark's own files something is, so that a file given at the wrong place is sent to the right one. */
const KINDS = ['case', 'backup', 'talk'] as const;
export type FileKind = (typeof KINDS)[number];

/** @param value what a file's JSON says; undefined where it names none of our formats */
export function kindOf(value: unknown): FileKind | undefined {
  const format = (value as { format?: unknown } | null)?.format;
  return KINDS.find((kind) => format === `tidemark-${kind}`);
}
