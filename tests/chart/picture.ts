/**
 * The rendered chart as one picture. Its blocks are drawings one below the other, those of the lanes
 * one upon the other; here each becomes a part of a single drawing that stands by itself.
 */

const TOKENS: Readonly<Record<string, string>> = {
  '--sans': 'Source Sans 3, sans-serif',
  '--serif': 'Source Serif 4, serif',
};

/** Numbers to a tenth, so that the last bits of arithmetic are no difference. */
const rounded = (text: string): string =>
  text.replace(/-?\d+\.\d+/g, (number) => String(Math.round(Number(number) * 100) / 100));

const number = (tag: string, name: string): number =>
  Number(new RegExp(` ${name}="([\\d.]+)"`).exec(tag)?.[1] ?? NaN);

/** The outermost drawings of a page, whole. */
function drawingsIn(html: string): string[] {
  const drawings: string[] = [];
  let depth = 0;
  let start = 0;
  for (const match of html.matchAll(/<svg\b[^>]*>|<\/svg>/g)) {
    if (match[0].startsWith('</')) {
      depth -= 1;
      if (depth === 0) drawings.push(html.slice(start, match.index + match[0].length));
    } else {
      if (depth === 0) start = match.index;
      depth += 1;
    }
  }
  return drawings;
}

/** One drawing of all blocks; colours and letters are those a page without its own would have. */
export function pictureOf(html: string): string {
  let y = 0;
  let below = 0;
  let width = 0;
  const parts = drawingsIn(html.replace(/<!--.*?-->/g, '')).map((drawing) => {
    const tag = /^<svg\b[^>]*>/.exec(drawing)?.[0] ?? '';
    const isLayer = tag.includes('layer');
    if (!isLayer) {
      y += below;
      below = number(tag, 'height');
    }
    width = Math.max(width, number(tag, 'width'));
    return `<g transform="translate(0 ${y})">\n${drawing}\n</g>`;
  });
  const height = y + below;
  const plain = parts
    .join('\n')
    .replace(/ (?:class|data-lane|tabindex|role|aria-[a-z]+)="[^"]*"/g, '')
    .replace(
      /var\((--[a-z]+), ([^()]+)\)/g,
      (_, token: string, value: string) => TOKENS[token] ?? value,
    )
    .replace(/></g, '>\n<');
  return rounded(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">\n` +
      `<rect width="100%" height="100%" fill="#fbfaf6"/>\n${plain}\n</svg>\n`,
  );
}
