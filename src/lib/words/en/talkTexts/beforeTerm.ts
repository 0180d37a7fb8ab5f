/** Before term and after, in words. */
import type { TalkText } from './facts.ts';

export const beforeTerm: TalkText = {
  title: 'Before term and after',
  about: 'Why weeks of gestation, why the corrected age, and one child counted four ways.',
  steps: [
    () => ({
      caption: 'Term is the one heavy line',
      note: 'Term is 40 weeks counted from the first day of the last period (AAP 2004). Left of the line age is given in weeks of gestation, right of it in months after term. The whole chart uses that one scale.',
    }),
    (f) => ({
      caption: 'Before term, age is given in weeks of gestation',
      note: `Responses appear before birth: the plantar grasp at ${f.comes('plantar-grasp')}, the traction response from ${f.comes('traction')}. Chronological age would say little here, since two infants one week old may be ten weeks apart in maturity.`,
    }),
    (f) => ({
      caption: 'At 30 weeks only some responses are present',
      note: `${f.prints('allen-capute-1986', 'moro')}. ${f.prints('nelson', 'rooting')}. A response that is not elicited at this age may not be due yet: before its window opens, that is as expected.`,
    }),
    () => ({
      caption: 'Kestrel, a fictional child, was born at 31 weeks',
      note: 'Kestrel is a fictional child, born on 4 October 2025 at 31w2d. The age marker gives the age in every clock: at birth the chronological age is 0 days, and term is 61 days away.',
    }),
    () => ({
      caption: 'One day, counted four ways',
      note: '12 January 2026. Chronological: 100 days. Corrected: 39 days, counted from the due date. Postmenstrual: 45w4d. And the date itself. The same infant on the same day; only the corrected age is laid on the windows after term.',
    }),
    () => ({
      caption: 'By chronological age, the lanes look late',
      note: 'The marker is now at 100 days after term. That is where Kestrel would be placed without correction: two months too far along. Ask the audience which lanes now lead one to expect something else.',
    }),
    () => ({
      caption: 'Corrected, until two years by default',
      note: 'The corrected age counts here for infants born before 37 weeks, up to a chronological age of 24 months. Both limits are common practice and can be changed in the settings. The screen always says which age was used, and why.',
    }),
    () => ({
      caption: 'A due date is never exact',
      note: 'The band beside the age marker is the uncertainty of the dating. An early ultrasound leaves days, an unknown method leaves weeks. A finding near the edge of a window may depend on it, and the sentence then says so.',
    }),
  ],
};
