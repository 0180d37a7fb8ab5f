/** The pieces of a file that a worker reads. */
import type { Atlas } from '../../atlas/atlas.ts';
import type { FileJob, FilePiece } from './files.ts';
import { piecesOf, type Ways } from './pieces.ts';

const ways: Ways<FileJob, FilePiece> = {
  worker: async () => new (await import('./files.worker.ts?worker&inline')).default(),
  here: async () => (await import('./files.ts')).readFile,
};

/** The atlas as it stands now, all of it: what asks for each part anew cannot go to a worker. */
const asItIs = ({
  reflexes,
  sources,
  milestones,
  sequences,
  variants,
  claims,
  counts,
}: Atlas): Atlas => ({
  reflexes,
  sources,
  milestones,
  sequences,
  variants,
  claims,
  counts,
});

export const filePieces = (
  { atlas, ...job }: FileJob,
  signal: AbortSignal,
): AsyncGenerator<FilePiece, undefined> => piecesOf(ways, { ...job, atlas: asItIs(atlas) }, signal);
