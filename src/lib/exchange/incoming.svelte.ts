/** What has been opened from a file and waits to be looked through before anything changes. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { namedAs } from '../case/merge.ts';
import { caseText } from '../case/raw.ts';
import type { LeftOut } from './fhir/entry.ts';
import type { Sheet } from './sheet/read.ts';
import { en } from '../words/en.ts';
import type { Desk } from '../repository/cases.svelte.ts';
import type { Offer } from './differences.ts';

export interface IncomingBundle {
  kind: 'bundle';
  name: string;
  offers: readonly Offer[];
  leftOut: readonly LeftOut[];
}

export interface IncomingSheet {
  kind: 'sheet';
  name: string;
  sheet: Sheet;
}

/** What became of a file: opened as a case, waiting to be looked through, given up, or refused with sentences. */
export type Received =
  { as: 'case' | 'waiting' | 'left' } | { as: 'refused'; sentences: readonly string[] };

/** A file as far as it is needed here. */
export interface IncomingFile {
  name: string;
  size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

export class Incoming {
  waiting = $state.raw<IncomingBundle | IncomingSheet | undefined>(undefined);
  readonly #desk: Desk;
  readonly #atlas: Atlas;

  constructor(desk: Desk, atlas: Atlas) {
    this.#desk = desk;
    this.#atlas = atlas;
  }

  /** Opens a file by what is in it, whatever it is called. What reads it is loaded only now. */
  async receive(file: IncomingFile): Promise<Received> {
    const { readIncoming } = await import('./receive.ts');
    const read = await readIncoming(file, this.#atlas, this.#desk.shelf);
    switch (read.kind) {
      case 'refused':
        return { as: 'refused', sentences: read.sentences };
      case 'left':
        return { as: 'left' };
      case 'case':
        return this.#take(read.record);
      default:
        this.waiting = read;
        return { as: 'waiting' };
    }
  }

  /** A case file as a new child, unless it is here already as it stands in the file. */
  async #take(record: Case): Promise<Received> {
    const { label } = record.child;
    const alike = this.#desk.shelf.filter((kept) => kept.record.child.label === label);
    const isHere = alike.some(
      (kept) => caseText(kept.record) === caseText(namedAs(record, kept.record)),
    );
    if (isHere) return { as: 'refused', sentences: [en.ui.received.isHere(label)] };
    const parsed = this.#desk.addRecord(record);
    if (parsed.ok) return { as: 'case' };
    const { problemWords } = await import('../words/en/problems.ts');
    return { as: 'refused', sentences: parsed.problems.map(problemWords) };
  }

  discard(): void {
    this.waiting = undefined;
  }
}
