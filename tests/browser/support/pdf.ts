/** Reads a PDF back with an independent library: pages, letters with their sizes and places, pictures. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A run of letters; lengths in points, from the lower left corner of its page. */
interface Letters {
  text: string;
  sizePt: number;
  x: number;
  y: number;
  width: number;
}

export interface PdfPage {
  width: number;
  height: number;
  letters: Letters[];
  /** Operators that paint pixels. */
  pictures: number;
  /** Operators that draw paths. */
  paths: number;
  /** Fonts by name, with whether their letters are in the file. */
  fonts: { name: string; isEmbedded: boolean }[];
}

const PICTURES = new Set<number>([
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintImageMaskXObject,
  OPS.paintImageXObjectRepeat,
]);

interface Font {
  name: string;
  missingFile?: boolean;
}

export async function readPdf(pdf: Buffer): Promise<PdfPage[]> {
  const task = getDocument({ data: new Uint8Array(pdf), fontExtraProperties: true, verbosity: 0 });
  const document = await task.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { fnArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    const letters = items.flatMap((item): Letters[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
      return [{ text: item.str, sizePt: Math.hypot(a, b), x, y, width: item.width }];
    });
    const names = new Set(items.flatMap((item) => ('str' in item ? [item.fontName] : [])));
    const fonts = [...names]
      .filter((name) => page.commonObjs.has(name))
      .map((name) => page.commonObjs.get(name) as Font)
      .map(({ name, missingFile }) => ({ name, isEmbedded: missingFile !== true }));
    pages.push({
      width,
      height,
      letters,
      pictures: fnArray.filter((op) => PICTURES.has(op)).length,
      paths: fnArray.filter((op) => op === OPS.constructPath).length,
      fonts,
    });
  }
  await task.destroy();
  return pages;
}
