/**
 * Which letters a picture is set in. The two typefaces travel inside the file; where a program
 * ignores that, as those for slides do, the next name on the list is one that a system has. The list
 * is that of the page, so that a letter the typeface has not comes from the same place.
 */

export type Typeface = 'sans' | 'serif';

const NAMES: Readonly<Record<Typeface, string>> = {
  sans: 'Source Sans 3',
  serif: 'Source Serif 4',
};

const STACKS: Readonly<Record<Typeface, string>> = {
  sans: `'${NAMES.sans}', 'Segoe UI', system-ui, Arial, sans-serif`,
  serif: `'${NAMES.serif}', Georgia, 'Times New Roman', serif`,
};

/** The typeface of a computed list of families. */
export const typefaceOf = (family: string): Typeface =>
  family.includes(NAMES.serif) ? 'serif' : 'sans';

/** A list of families that stands by itself. */
export const stackFor = (family: string): string => STACKS[typefaceOf(family)];

/** The same picture with its letters only named, for where no rule may come with it. */
export const lettersNamed = (svg: string): string => svg.replace(/<style>[^<]*<\/style>/, '');

/** A file's bytes in base64, by typeface: WOFF2, all weights in one. */
export type Bytes = Readonly<Record<Typeface, string>>;

/** The rules that bring the typefaces used, and figures of one width as on the page. */
export function letterRules(used: ReadonlySet<Typeface>, bytes: Bytes): string {
  const faces = (['sans', 'serif'] as const)
    .filter((face) => used.has(face))
    .map(
      (face) =>
        `@font-face{font-family:'${NAMES[face]}';font-weight:200 900;src:url(data:font/woff2;base64,${bytes[face]}) format('woff2')}`,
    );
  return [...faces, 'text{font-variant-numeric:tabular-nums}'].join('');
}
