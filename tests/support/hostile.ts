/**
 * Files as they should not be: valid ones cut, flipped, swollen and swapped by chance, for every reader
 * of files. A mutation of text works on any format; those of JSON also change kinds and depths.
 */
import fc from 'fast-check';

/** What is put where it does not belong. */
const ODD: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, false, '', ' ', [], {}, 0, -1, 1e308, -1e-308, 2 ** 53),
  fc.constantFrom('__proto__', 'constructor', '\u0000', '\ud800', '\u202e', '=1+1', '<script>'),
  fc.integer({ min: 1, max: 200_000 }).map((length) => 'x'.repeat(length)),
  fc.integer({ min: 1, max: 1500 }).map(nested),
  fc.jsonValue({ maxDepth: 3 }),
);

/** A list in a list, so deep. */
function nested(depth: number): unknown {
  let value: unknown = 'deep';
  for (let i = 0; i < depth; i++) value = i % 2 ? [value] : { entry: value };
  return value;
}

/** The places of a value that hold something, as paths; the first so many are enough. */
function places(value: unknown, limit = 4000): (string | number)[][] {
  const found: (string | number)[][] = [];
  const open: { value: unknown; path: (string | number)[] }[] = [{ value, path: [] }];
  for (let next = 0; next < open.length && found.length < limit; next++) {
    const one = open[next]!;
    if (one.path.length > 0) found.push(one.path);
    if (typeof one.value !== 'object' || one.value === null) continue;
    for (const [key, inner] of Object.entries(one.value))
      open.push({
        value: inner,
        path: [...one.path, Array.isArray(one.value) ? Number(key) : key],
      });
  }
  return found;
}

type Box = Record<string | number, unknown>;

const shallow = (value: unknown): Box =>
  (Array.isArray(value) ? [...(value as unknown[])] : { ...(value as object) }) as Box;

/** A copy of a value in which one place is changed; only what leads there is copied, whatever its depth. */
function changedAt(
  value: unknown,
  path: readonly (string | number)[],
  change: (box: Box, key: string | number) => void,
): unknown {
  const copy = shallow(value);
  let box = copy;
  for (const key of path.slice(0, -1)) box = box[key] = shallow(box[key]);
  change(box, path.at(-1)!);
  return copy;
}

/** JSON text of a valid value with one to four places swapped, renamed, doubled or taken away. */
export function hostileJson(valid: fc.Arbitrary<unknown>): fc.Arbitrary<string> {
  const step = fc.record({
    where: fc.nat(),
    how: fc.constantFrom('swap', 'drop', 'rename', 'double', 'proto'),
    odd: ODD,
  });
  return fc.tuple(valid, fc.array(step, { minLength: 1, maxLength: 4 })).map(([value, steps]) => {
    let result = value;
    for (const { where, how, odd } of steps) {
      const all = places(result);
      const path = all[where % Math.max(1, all.length)];
      if (!path) continue;
      result = changedAt(result, path, (box, key) => {
        if (how === 'swap') box[key] = odd;
        else if (how === 'drop') Reflect.deleteProperty(box, key);
        else if (how === 'double' && Array.isArray(box)) box.push(box[key as number]);
        else if (how === 'proto')
          Object.defineProperty(box, '__proto__', { value: odd, enumerable: true });
        else box[`${key}x`] = odd;
      });
    }
    return JSON.stringify(result);
  });
}

/** Text of any format with pieces cut out, flipped, doubled, or letters of another encoding put in. */
export function hostileText(valid: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const step = fc.record({
    from: fc.nat(),
    length: fc.integer({ min: 1, max: 200 }),
    how: fc.constantFrom('cut', 'end', 'flip', 'double', 'odd', 'digits'),
    bits: fc.integer({ min: 1, max: 255 }),
    odd: fc.constantFrom(
      '\u0000',
      '\ufeff',
      '\ufffd',
      '"',
      ';',
      ',',
      '\r',
      '\n',
      '\t',
      '\ud800',
      '}',
    ),
  });
  return fc.tuple(valid, fc.array(step, { minLength: 1, maxLength: 4 })).map(([text, steps]) => {
    let result = text;
    for (const { from, length, how, bits, odd } of steps) {
      const at = from % Math.max(1, result.length);
      const [before, piece, after] = [
        result.slice(0, at),
        result.slice(at, at + length),
        result.slice(at + length),
      ];
      if (how === 'cut') result = before + after;
      else if (how === 'end') result = before;
      else if (how === 'double') result = before + piece + piece + after;
      else if (how === 'odd') result = before + odd + piece + after;
      else if (how === 'digits') result = `${before}${'9'.repeat(length * 5)}${piece}${after}`;
      else
        result =
          before + String.fromCharCode((piece.charCodeAt(0) || 0) ^ bits) + piece.slice(1) + after;
    }
    return result;
  });
}

/** Bytes of a text as a wrong program would write them: in another encoding, and some flipped. */
export function hostileBytes(valid: fc.Arbitrary<string>): fc.Arbitrary<Uint8Array> {
  const encoding = fc.constantFrom<BufferEncoding>('utf8', 'latin1', 'utf16le');
  const flip = fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 }));
  return fc
    .tuple(valid, encoding, fc.array(flip, { maxLength: 6 }))
    .map(([text, written, flips]) => {
      const bytes = Uint8Array.from(Buffer.from(text, written));
      for (const [where, byte] of flips) if (bytes.length > 0) bytes[where % bytes.length] = byte;
      return bytes;
    });
}
