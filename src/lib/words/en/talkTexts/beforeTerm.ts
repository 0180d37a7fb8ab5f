/** Before term and after, in words. */
import type { TalkText } from './facts.ts';

export const beforeTerm: TalkText = {
  title: 'Before term and after',
  about: 'Why weeks of gestation, why the corrected age, and one child counted four ways.',
  steps: [
    () => ({
      caption: 'Term is the one heavy line',
      note: 'Term is 40 weeks counted from the first day of the last period (AAP 2004). Left of the line age is told in weeks of gestation, right of it in months after term. The whole chart stands on that one scale.',
    }),
    (f) => ({
      caption: 'Before term, age is told in weeks of gestation',
      note: `Responses come in before birth: the plantar grasp from ${f.comes('plantar-grasp')}, the traction response from ${f.comes('traction')}. Weeks since birth would say nothing here, since two infants of one week may be ten weeks apart.`,
    }),
    (f) => ({
      caption: 'At 30 weeks only part of it is there',
      note: `${f.prints('allen-capute-1986', 'moro')}. ${f.prints('nelson', 'rooting')}. What is missing at this age may not be due yet: a response not elicited before its window opens fits the age.`,
    }),
    () => ({
      caption: 'Kestrel, invented, was born at 31 weeks',
      note: 'Kestrel is an invented child, born on 4 October 2025 at 31w2d. The age line says the age in every clock: at birth no time has passed since birth, and term is 61 days off.',
    }),
    () => ({
      caption: 'One day, counted four ways',
      note: '12 January 2026. Since birth: 100 days. Corrected: 39 days, counted from the due date. Postmenstrual: 45w4d. And the date itself. The same infant on the same day; only the corrected age is laid on the windows after term.',
    }),
    () => ({
      caption: 'By the age since birth, the lanes look late',
      note: 'The line now stands where 100 days after term would be. That is where Kestrel would be read without correction: two months too far along. Let the hall say which lanes change what they lead one to expect.',
    }),
    () => ({
      caption: 'Corrected, until two years by custom',
      note: 'The corrected age counts here for infants born before 37 weeks, up to 24 months since birth. Both limits are customs and can be changed in the settings; the screen always says which age was used, and why.',
    }),
    () => ({
      caption: 'A due date is never exact',
      note: 'The band beside the age line is the spread that the dating leaves. An early ultrasound leaves days, an unknown method leaves weeks. A finding near the edge of a window may hang on it, and the sentence then says so.',
    }),
  ],
};
