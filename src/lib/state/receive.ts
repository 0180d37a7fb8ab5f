/** A file that was given: which kind it is, by what is in it, and what it holds. */
import type { Atlas } from '../atlas/atlas.ts';
import { sizeProblem } from '../case/file.ts';
import { bundleTooLarge, looksLikeFhir, openBundleText } from '../store/fhir/open.ts';
import { looksLikeTable, readSheet, sheetTooLarge, textOf } from '../store/sheet/read.ts';
import type { Kept } from '../store/store.ts';
import { bundleSentence } from '../words/en/exchange.ts';
import { problemWords } from '../words/en/problems.ts';
import { sheetSentence } from '../words/en/sheets.ts';
import type { IncomingBundle, IncomingFile, IncomingSheet } from './incoming.svelte.ts';
import { offersOf } from './taking.ts';

type Read =
  | IncomingBundle
  | IncomingSheet
  | { kind: 'case'; file: { size: number; text(): Promise<string> } }
  | { kind: 'refused'; sentences: readonly string[] };

const refused = (...sentences: string[]): Read => ({ kind: 'refused', sentences });

/** A case file says so at its beginning, whatever stands in its notes. */
const isCase = (text: string): boolean => /"format"\s*:\s*"tidemark-/.test(text.slice(0, 200));

/** Reads a file. The size is looked at before a byte is read. */
export async function readIncoming(
  file: IncomingFile,
  atlas: Atlas,
  shelf: readonly Kept[],
): Promise<Read> {
  const { name, size } = file;
  const [tooLarge] = bundleTooLarge(size) ? [sizeProblem(size)] : [];
  if (tooLarge) return refused(problemWords(tooLarge));
  const text = textOf(new Uint8Array(await file.arrayBuffer()));
  if (looksLikeFhir(text) && !isCase(text)) {
    const opened = openBundleText(text, atlas);
    if (!opened.ok) return refused(...opened.problems.map(bundleSentence));
    const offers = offersOf(opened.children, shelf);
    return { kind: 'bundle', name, offers, leftOut: opened.leftOut };
  }
  if (looksLikeTable(text)) {
    const large = sheetTooLarge(size);
    if (large) return refused(sheetSentence(large));
    const read = readSheet(text);
    if (!read.ok) return refused(sheetSentence(read.problem));
    return { kind: 'sheet', name, sheet: read.sheet };
  }
  return { kind: 'case', file: { size, text: () => Promise.resolve(text) } };
}
