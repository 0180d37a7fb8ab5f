/**
 * What a JSON text would come to, before it is read: how deep its brackets stand in one another and of how
 * many parts it is. Two million brackets in a row are few bytes and a second's work to read.
 */

export interface Weight {
  deepest: number;
  /** Brackets left open at the end. */
  open: number;
  /** Lists, objects and what stands behind commas. */
  parts: number;
}

const [QUOTE, BACKSLASH, COMMA] = [0x22, 0x5c, 0x2c];
const OPENS = new Set([0x5b, 0x7b]);
const CLOSES = new Set([0x5d, 0x7d]);

/** Counted letter by letter, and no further than the limit of depth: a pattern would exhaust the stack. */
export function weightOf(text: string, maxDepth: number): Weight {
  let [open, deepest, parts, isWithin] = [0, 0, 0, false];
  for (let at = 0; at < text.length && deepest <= maxDepth; at++) {
    const mark = text.charCodeAt(at);
    if (isWithin) {
      if (mark === BACKSLASH) at += 1;
      else if (mark === QUOTE) isWithin = false;
    } else if (mark === QUOTE) isWithin = true;
    else if (mark === COMMA) parts += 1;
    else if (OPENS.has(mark)) {
      parts += 1;
      deepest = Math.max(deepest, ++open);
    } else if (CLOSES.has(mark)) open -= 1;
  }
  return { deepest, open, parts };
}

/** Whether a text is deeper or of more parts than an honest file of its kind. */
export function isTooHeavy(text: string, maxDepth: number, maxParts: number): boolean {
  const { deepest, parts } = weightOf(text, maxDepth);
  return deepest > maxDepth || parts > maxParts;
}
