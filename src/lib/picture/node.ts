/** A picture as plain elements, and as the text of a file. */

/** An element of an SVG file: nothing in it refers to the page it was drawn on. */
export interface Node {
  tag: string;
  at?: Readonly<Record<string, string | number | undefined>>;
  within?: readonly Node[];
  text?: string;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** What XML 1.0 cannot hold at all, not even escaped (its production Char): left out. */
// eslint-disable-next-line no-control-regex -- these are the characters meant
const REFUSED = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Cs}/gu;

const escaped = (text: string): string =>
  text.replaceAll(REFUSED, '').replaceAll(/[&<>"]/g, (letter) => ENTITIES[letter] ?? letter);

/** An element and all within it as XML. Attributes without a value are left out. */
export function markup({ tag, at = {}, within = [], text = '' }: Node): string {
  const attributes = Object.entries(at)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  const content = escaped(text) + within.map(markup).join('');
  return content === '' ? `<${tag}${attributes}/>` : `<${tag}${attributes}>${content}</${tag}>`;
}
