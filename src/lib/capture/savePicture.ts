/** Figures to take away: a part of the page made into a picture, saved or put on the clipboard. */
import type { Lettering, Measure } from '../chart/labels.ts';
import { lettersNamed } from '../picture/letters.ts';
import type { Around, Picture } from '../picture/sheet.ts';
import { fileName, saveBlob } from '../platform/download.ts';

export const FORMATS = ['svg', 'png'] as const;
export type Format = (typeof FORMATS)[number];

/** Pixels of a PNG for one of the page. */
export const SCALES = [1, 2, 3, 4] as const;
export type Scale = (typeof SCALES)[number];

export const GROUNDS = ['plain', 'transparent'] as const;
export type Ground = (typeof GROUNDS)[number];

export const SHADES = ['light', 'dark'] as const;
export type Shade = (typeof SHADES)[number];

/** What a picture is made from and how. */
export interface Wish {
  root: HTMLElement;
  /** For whoever cannot see it. */
  label: string;
  around: Around | undefined;
  ground: Ground;
  shade: Shade;
}

const TYPES: Readonly<Record<Format, string>> = { svg: 'image/svg+xml', png: 'image/png' };

/** Canvases beyond this many pixels a side are refused by one browser or another. */
const MOST_PX = 16_384;

/** Whether the page is dark now. */
export const shadeNow = (): Shade =>
  getComputedStyle(document.documentElement).colorScheme === 'dark' ? 'dark' : 'light';

/** Reads something while the page has another shade; it is back before it is painted. */
function shaded<T>(shade: Shade, read: () => T): T {
  const { dataset } = document.documentElement;
  const before = dataset.theme;
  dataset.theme = shade;
  try {
    return read();
  } finally {
    if (before === undefined) delete dataset.theme;
    else dataset.theme = before;
  }
}

function measureIn(style: CSSStyleDeclaration): Measure {
  const context = document.createElement('canvas').getContext('2d');
  return (text: string, { sizePx, weight = 400, serif }: Lettering): number => {
    if (!context) return text.length * sizePx;
    context.font = `${weight} ${sizePx}px ${style.getPropertyValue(serif ? '--serif' : '--sans')}`;
    return context.measureText(text).width;
  };
}

/** The picture as it stands on the page now. */
export async function makePicture(wish: Wish): Promise<Picture> {
  const [{ sheet }, { readDrawing }, { BYTES }] = await Promise.all([
    import('../picture/sheet.ts'),
    import('./readPage.ts'),
    import('./fonts.ts'),
    document.fonts.ready,
  ]);
  return shaded(wish.shade, () => {
    const style = getComputedStyle(document.documentElement);
    const token = (name: string): string => style.getPropertyValue(name).trim();
    return sheet({
      drawing: readDrawing(wish.root, wish.around !== undefined),
      around: wish.around,
      label: wish.label,
      ground: wish.ground === 'plain' ? token('--paper') : undefined,
      ink: token('--ink'),
      soft: token('--soft'),
      bytes: BYTES,
      measure: measureIn(style),
    });
  });
}

/** The size of a PNG in pixels; undefined when it is more than a browser can draw. */
export function sizeAt(
  { widthPx, heightPx }: Pick<Picture, 'widthPx' | 'heightPx'>,
  scale: Scale,
): { width: number; height: number } | undefined {
  const [width, height] = [widthPx * scale, heightPx * scale];
  return Math.max(width, height) <= MOST_PX ? { width, height } : undefined;
}

/**
 * The picture drawn as a PNG.
 * @throws RangeError when the browser cannot draw one of that size
 */
async function drawPng(picture: Picture, scale: Scale): Promise<Blob> {
  const size = sizeAt(picture, scale);
  if (!size) throw new RangeError('larger than a canvas');
  const image = new Image();
  image.src = addressOf(picture);
  await image.decode();
  const canvas = document.createElement('canvas');
  Object.assign(canvas, size);
  canvas.getContext('2d')?.drawImage(image, 0, 0, size.width, size.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob) resolve(blob);
      else reject(new RangeError('the canvas gave nothing'));
    }, TYPES.png);
  });
}

/** The picture as an address that an image can show. */
export const addressOf = ({ svg }: Picture): string =>
  `data:${TYPES.svg};charset=utf-8,${encodeURIComponent(svg)}`;

const bytesOf = (picture: Picture, format: Format, scale: Scale): Promise<Blob> =>
  format === 'png'
    ? drawPng(picture, scale)
    : Promise.resolve(new Blob([picture.svg], { type: TYPES.svg }));

/** The name of the file: what the picture is called, and how it is scaled. */
const pictureName = (title: string, format: Format, scale: Scale): string =>
  fileName(title.slice(0, 80) + (format === 'png' && scale > 1 ? ` ${scale}x` : ''), format);

export async function savePicture(
  picture: Picture,
  title: string,
  format: Format,
  scale: Scale,
): Promise<string> {
  const name = pictureName(title, format, scale);
  saveBlob(name, await bytesOf(picture, format, scale));
  return name;
}

/** Whether the page may put pictures of a kind on the clipboard here. */
export const canCopy = (format: Format): boolean =>
  typeof ClipboardItem !== 'undefined' &&
  'clipboard' in navigator &&
  (format === 'png' || ClipboardItem.supports(TYPES.svg));

/**
 * Puts the picture on the clipboard. An SVG goes there twice: as the text that it is, with its
 * letters, and as a picture that names them, since a browser cleans pictures by the page's own policy
 * and would take the rule with the letters out.
 */
export async function copyPicture(picture: Picture, format: Format, scale: Scale): Promise<void> {
  const svg = {
    [TYPES.svg]: new Blob([lettersNamed(picture.svg)], { type: TYPES.svg }),
    'text/plain': new Blob([picture.svg], { type: 'text/plain' }),
  };
  const item = format === 'svg' ? svg : { [TYPES.png]: drawPng(picture, scale) };
  await navigator.clipboard.write([new ClipboardItem(item)]);
}
