/** A file that was given: which kind it is, by what is in it, and what it holds. Read apart from the page. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import type { LeftOut } from './fhir/entry.ts';
import type { Kept } from '../store/store.ts';
import { bundleSentence } from '../words/en/exchange.ts';
import { problemWords } from '../words/en/problems.ts';
import * as words from '../words/en/reading.ts';
import { sheetSentence } from '../words/en/sheets.ts';
import type { FilePiece } from './worker/files.ts';
import { filePieces } from './worker/fileWays.ts';
import { reading } from './worker/reading.svelte.ts';
import type { IncomingBundle, IncomingFile, IncomingSheet } from './incoming.svelte.ts';
import { offering, type Offer } from './differences.ts';

type Refused = { kind: 'refused'; sentences: readonly string[] };
type Read =
  IncomingBundle | IncomingSheet | { kind: 'case'; record: Case } | { kind: 'left' } | Refused;

const refused = (...sentences: string[]): Refused => ({ kind: 'refused', sentences });

function whyNot(piece: FilePiece & { is: 'refused' }): Refused {
  switch (piece.by) {
    case 'file':
      return refused(...piece.problems.map(problemWords));
    case 'bundle':
      return refused(...piece.problems.map(bundleSentence));
    case 'sheet':
      return refused(sheetSentence(piece.problem));
    case 'backup':
      return refused();
  }
}

/** Reads a file; nothing here changes by it. */
export async function readIncoming(
  file: IncomingFile,
  atlas: Atlas,
  shelf: readonly Kept[],
): Promise<Read> {
  const { name } = file;
  const offers: Offer[] = [];
  const offer = offering(shelf);
  let leftOut: readonly LeftOut[] = [];
  let read: Read | undefined;
  const end = await reading.through(
    name,
    (signal) => filePieces({ as: 'record', file, size: file.size, atlas }, signal),
    (piece) => {
      if (piece.is === 'refused') read = whyNot(piece);
      else if (piece.is === 'case') read = { kind: 'case', record: piece.record };
      else if (piece.is === 'sheet') read = { kind: 'sheet', name, sheet: piece.sheet };
      else if (piece.is === 'bundle') leftOut = piece.leftOut;
      else if (piece.is === 'children')
        for (const child of piece.children) offers.push(offer(child));
    },
  );
  if (end === 'left') return { kind: 'left' };
  if (end === 'broke') return refused(words.broke);
  return read ?? { kind: 'bundle', name, offers, leftOut };
}
