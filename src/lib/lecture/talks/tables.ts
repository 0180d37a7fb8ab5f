/** When the tables disagree. */
import { months, upTo, view } from './view.ts';

const HAND = ['garcia-sanchez', 'nelson', 'beststart', 'kumc-2012', 'zafeiriou-2004'];
const HEAD = ['bates', 'zafeiriou-2004', 'osullivan-handout', 'nelson'];
const FOOT = ['bates', 'osullivan-handout', 'molnar-handout', 'zafeiriou-2004'];
const PARTLY = ['allen-capute-1986', 'robinson-1966', 'nelson', 'zafeiriou-2004'];

const hand = ['palmar-grasp'];
const head = ['atnr'];
const foot = ['plantar-grasp'];

export const tables = [
  view(['palmar-grasp', 'atnr', 'plantar-grasp', 'stnr'], months(4), { range: upTo(18) }),
  view(hand, months(4), { range: upTo(10), sources: HAND, opened: hand }),
  view(head, months(5), { range: upTo(13), sources: HEAD, opened: head }),
  view(head, months(6), {
    range: upTo(14),
    sources: [...HEAD, 'shapiro-1981'],
    opened: head,
  }),
  view(foot, months(9), { range: upTo(18), sources: FOOT, opened: foot }),
  view(hand, months(3), { range: upTo(10), sources: PARTLY, opened: hand }),
  view(['palmar-grasp', 'atnr', 'plantar-grasp', 'stnr'], months(4), {
    range: upTo(18),
    sources: ['nelson', 'osullivan-handout'],
  }),
];
