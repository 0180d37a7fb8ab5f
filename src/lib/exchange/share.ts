/** A child's record as the file that is handed over. */
import type { Atlas } from '../atlas/atlas.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import type { Case } from '../case/case.ts';
import { caseText } from '../case/raw.ts';
import { withoutIdentity, type Nameless } from '../case/nameless.ts';
import { en } from '../words/en.ts';
import { fileName, saveBlob } from '../platform/download.ts';
import { newPartId } from '../platform/ids.ts';

/** A whole number from 0 to below the count; what is left over of 2^32 is too little to matter. */
const pick = (count: number): number => {
  const [chance = 0] = crypto.getRandomValues(new Uint32Array(1));
  return chance % count;
};

/** The record on other dates and without names; the ages that count stay those by the limit in force. */
export const nameless = (record: Case, atlas: Atlas, untilMonths: number): Nameless =>
  withoutIdentity(record, {
    label: en.share.page.label,
    examiner: en.share.page.examiner,
    known: atlas.reflexes,
    limitMonths: [DEFAULT_LIMITS.untilMonths, untilMonths],
    pick,
    newId: newPartId,
  });

export interface HandOver {
  record: Case;
  isNameless: boolean;
  /** Undefined: as plain text. */
  passphrase: string | undefined;
}

/** Saves the file and answers with its name, which says nothing of a child that goes without identity. */
export async function handOver({ record, isNameless, passphrase }: HandOver): Promise<string> {
  const label = isNameless ? en.share.page.fileName : record.child.label;
  const text = caseText(record);
  if (passphrase === undefined) {
    const name = fileName(label);
    saveBlob(name, new Blob([text], { type: 'application/json' }));
    return name;
  }
  const { closedWith } = await import('./worker/envelopes.ts');
  const name = fileName(label, 'tidemark.json.age');
  const sealed = await closedWith(new Blob([text]), passphrase);
  saveBlob(name, new Blob([sealed], { type: 'application/octet-stream' }));
  return name;
}
