/** The ready-made talks, in the order in which they are best given. */
import type { Atlas } from '../../atlas/atlas.ts';
import { armsLegs as armsLegsText } from '../../words/en/talkTexts/armsLegs.ts';
import { beforeTerm as beforeTermText } from '../../words/en/talkTexts/beforeTerm.ts';
import { firstYear as firstYearText } from '../../words/en/talkTexts/firstYear.ts';
import { lookAlikes as lookAlikesText } from '../../words/en/talkTexts/lookAlikes.ts';
import { protective as protectiveText } from '../../words/en/talkTexts/protective.ts';
import { readingChild as readingChildText } from '../../words/en/talkTexts/readingChild.ts';
import { tables as tablesText } from '../../words/en/talkTexts/tables.ts';
import type { Talk } from '../talk.ts';
import { armsLegs } from './armsLegs.ts';
import { beforeTerm } from './beforeTerm.ts';
import { firstYear } from './firstYear.ts';
import { lookAlikes } from './lookAlikes.ts';
import { protective } from './protective.ts';
import { readingChild } from './readingChild.ts';
import { tables } from './tables.ts';
import { talkOf } from './view.ts';

const READY = {
  'first-year': [firstYear, firstYearText],
  'before-term': [beforeTerm, beforeTermText],
  'look-alikes': [lookAlikes, lookAlikesText],
  'arms-legs': [armsLegs, armsLegsText],
  protective: [protective, protectiveText],
  tables: [tables, tablesText],
  'reading-a-child': [readingChild, readingChildText],
} as const;

export type ReadyId = keyof typeof READY;
export const READY_IDS = Object.keys(READY) as ReadyId[];

export const isReady = (id: string): id is ReadyId => Object.hasOwn(READY, id);

export const readyTalk = (id: ReadyId, atlas: Atlas): Talk => {
  const [views, text] = READY[id];
  return talkOf(views, text, atlas);
};
