/** English, whole: the keys every other language has to fill. */
import * as ages from './en/ages.ts';
import * as atlas from './en/atlas.ts';
import * as record from './en/case.ts';
import * as judge from './en/judge.ts';
import * as problems from './en/problems.ts';

export const en = { ages, atlas, record, judge, problems };

export type Words = typeof en;
