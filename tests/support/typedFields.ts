/**
 * The fields of a component that text is typed into, found in its syntax tree: inputs, text areas and
 * fields of a component library, wherever they stand (in a snippet given to a shared field, a branch, a
 * loop), and what leaves it open whether a browser keeps what is typed.
 */
import { parse } from 'svelte/compiler';

/** Kinds of input that nothing is typed into (HTML standard, 4.10.5: the states of the type attribute). */
const NOT_TYPED = new Set(
  'radio checkbox file range color hidden submit reset button image'.split(' '),
);

export interface TypedField {
  /** `input`, `textarea`, the name of a component, or what stands for an element that is not known. */
  tag: string;
  /** In the component's text, from 1. */
  line: number;
  /** Why a browser may keep what is typed; undefined where it may not. */
  fault: string | undefined;
}

interface Node {
  type: string;
  start: number;
  name?: string;
  attributes?: Node[];
  value?: unknown;
  data?: string;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

function* nodesIn(value: unknown): Generator<Node> {
  if (Array.isArray(value)) for (const one of value) yield* nodesIn(one);
  else if (isNode(value)) {
    yield value;
    for (const [key, inner] of Object.entries(value)) if (key !== 'metadata') yield* nodesIn(inner);
  }
}

/** The text of an attribute; null where it is computed, undefined where the element has none. */
function textOf({ attributes = [] }: Node, name: string): string | null | undefined {
  const found = attributes.find((one) => one.type === 'Attribute' && one.name === name);
  if (!found) return undefined;
  const parts = Array.isArray(found.value) ? (found.value as Node[]) : [];
  return parts.length === 1 && parts[0]!.type === 'Text' ? (parts[0]!.data ?? null) : null;
}

/** What is wrong with how a field asks the browser not to keep it; HTML standard, 4.10.18.7. */
function faultOf(node: Node): string | undefined {
  const asked = textOf(node, 'autocomplete');
  if (asked === undefined) return 'no autocomplete="off"';
  if (asked !== 'off') return `autocomplete is ${asked === null ? 'computed' : `"${asked}"`}`;
  const all = node.attributes ?? [];
  const at = all.findIndex(({ name }) => name === 'autocomplete');
  return all.slice(at).some(({ type }) => type === 'SpreadAttribute')
    ? 'a spread after autocomplete="off" may undo it'
    : undefined;
}

function fieldOf(node: Node): Omit<TypedField, 'line'> | undefined {
  const { type, name = '' } = node;
  if (type === 'RegularElement' && (name === 'input' || name === 'textarea')) {
    const kind = name === 'input' ? textOf(node, 'type') : undefined;
    return kind && NOT_TYPED.has(kind) ? undefined : { tag: name, fault: faultOf(node) };
  }
  if (type === 'Component' && /(?:^|\.)(?:Input|Textarea)$/.test(name))
    return { tag: name, fault: faultOf(node) };
  // what these make is known only when they run
  if (type === 'SvelteElement') return { tag: 'svelte:element', fault: 'may be a field' };
  if (type === 'HtmlTag') return { tag: '{@html}', fault: 'may hold a field' };
  return undefined;
}

/** Every field of a component's text that is typed into. Throws where the text is no component. */
export function typedFields(source: string): TypedField[] {
  const { fragment } = parse(source, { modern: true });
  return [...nodesIn(fragment)].flatMap((node) => {
    const found = fieldOf(node);
    return found ? [{ ...found, line: source.slice(0, node.start).split('\n').length }] : [];
  });
}

/** Where text is typed into an element that is no form control, of which a browser keeps no form data. */
export const editableIn = (source: string): boolean =>
  [...nodesIn(parse(source, { modern: true }).fragment)].some(
    ({ type, name }) => type === 'Attribute' && name?.toLowerCase() === 'contenteditable',
  );
