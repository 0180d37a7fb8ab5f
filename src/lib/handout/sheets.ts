/** How a page falls on sheets of paper: blocks in their order, none of them torn apart. */

export interface Block {
  /** Height in any one unit, that of the room. */
  height: number;
  /** Stands on the same sheet as the block after it, as a heading does. */
  keeps: boolean;
}

/** So many lines of a text stand together at least, before and after a break. */
export const TOGETHER = 2;

/**
 * A text that may be torn between its lines, as the blocks it can be torn into.
 * @param height of the text with its heading
 * @param line height of a line, in the unit of the height
 * @param lines how many it has, without the heading
 */
export function flowing(height: number, line: number, lines: number): Block[] {
  if (lines < 2 * TOGETHER) return [{ height, keeps: false }];
  const between = Array.from({ length: lines - 2 * TOGETHER }, () => ({
    height: line,
    keeps: false,
  }));
  return [
    { height: height - (lines - TOGETHER) * line, keeps: false },
    ...between,
    { height: TOGETHER * line, keeps: false },
  ];
}

export interface Fall {
  /** Sheets needed, 1 at least. */
  sheets: number;
  /** Room left on the last sheet, in the unit of the blocks. */
  rest: number;
}

/**
 * How many sheets the blocks take when each goes on the first sheet that has room for it. A block
 * taller than a sheet runs over as many as it fills.
 * @param room height of a sheet between its margins; above 0
 */
export function fallOf(blocks: readonly Block[], room: number): Fall {
  let sheets = 1;
  let rest = room;
  for (let at = 0; at < blocks.length;) {
    let height = blocks[at]!.height;
    let after = at + 1;
    for (; blocks[after - 1]!.keeps && after < blocks.length; after += 1)
      height += blocks[after]!.height;
    if (height > rest && rest < room) {
      sheets += 1;
      rest = room;
    }
    if (height > room) {
      sheets += Math.ceil(height / room) - 1;
      rest = (room - (height % room)) % room;
    } else rest -= height;
    at = after;
  }
  return { sheets, rest };
}

/**
 * The first of the layouts, tried in order, that needs no more than so many sheets; else the last.
 * @param layouts one at least
 * @param lay how a layout falls
 */
export function firstWithin<T>(
  layouts: readonly [T, ...T[]],
  most: number,
  lay: (layout: T) => Fall,
): { layout: T; fall: Fall } {
  let tried = { layout: layouts[0], fall: lay(layouts[0]) };
  for (const layout of layouts.slice(1)) {
    if (tried.fall.sheets <= most) break;
    tried = { layout, fall: lay(layout) };
  }
  return tried;
}
