/**
 * Why a response that was not elicited counts as far as it does (`weight.ts`), reflex by reflex, at ages
 * when the sources have it established. Loaded when it is first shown. `basis` is `read` where all that
 * the sentence says was read, `memory` where it is professional knowledge alone.
 */

/** Why, in a sentence or two, with figures as printed. */
export interface WeightReason {
  why: string;
  sources: readonly string[];
  basis: 'read' | 'mixed' | 'memory';
}

/** By reflex id; every reflex of the atlas has its note. */
export const ABSENCE: Readonly<Record<string, WeightReason>> = {
  rooting: {
    why: 'In a study of 71 preterm infants rooting was seen at the first contact with the breast, whatever the age, from 27.9 weeks on. A fed or sleepy infant may not respond: recalled from teaching.',
    sources: ['nyqvist-1999', 'common-practice'],
    basis: 'mixed',
  },
  sucking: {
    why: 'In a study of 71 preterm infants sucking was seen at the first contact with the breast, whatever the age, from 27.9 weeks on. In 52 preterm infants, not keeping sucking going at about 46 weeks went with poorer development at 2 years.',
    sources: ['nyqvist-1999', 'wolthuis-2015'],
    basis: 'read',
  },
  swallowing: {
    why: 'Swallowing was observed in 62 fetuses between 15 and 38 weeks, and it lasts for life. That no healthy infant lacks it is recalled from teaching.',
    sources: ['miller-2003', 'lally-valentine', 'common-practice'],
    basis: 'mixed',
  },
  'palmar-grasp': {
    why: 'All 47 infants born very preterm had it from 25 weeks on, and it was constantly present in 219 examinations of 62 newborns. A paper of 1934 says most newborns, though not all.',
    sources: ['allen-capute-1986', 'robinson-1966', 'richter-1934'],
    basis: 'read',
  },
  'plantar-grasp': {
    why: 'All of 834 healthy infants had it within the first 6 months. Of 93 infants in whom it was weak or not elicited 75 later had cerebral palsy.',
    sources: ['futagi-suzuki-1999'],
    basis: 'read',
  },
  moro: {
    why: 'The spreading phase was constantly present in 219 examinations of 62 newborns of 25 to 42 weeks. A review calls absence in the newborn period and early infancy highly significant, from many causes.',
    sources: ['robinson-1966', 'futagi-2012'],
    basis: 'read',
  },
  'acoustic-startle': {
    why: 'A vibrating sound startled all fetuses of one study by 28 weeks, but noises drew a response from only 42.9 to 71.3 in 100 newborns of another, and of 100 newborns 61 answered normally on the first day and 82 on the third. That a response which is still not elicited calls for a hearing check is recalled from teaching.',
    sources: ['kuhlman-1988', 'beintema-1968', 'common-practice'],
    basis: 'mixed',
  },
  'dolls-eye': {
    why: 'All 64 awake newborns in one study moved the eyes against a turn of the whole body, and none did asleep. In a study of 325 healthy infants 75 in 100 no longer had the response by 11.5 weeks: absence counts only in the first weeks.',
    sources: ['lawrence-1953', 'snir-2010'],
    basis: 'read',
  },
  atnr: {
    why: 'At 2 months 89 in 100 of 249 infants at routine visits had it, so 11 had not, and those without it had higher mean scores at one year. In 30 term newborns it was rare after turns of their own.',
    sources: ['shapiro-1981', 'kranen-1997'],
    basis: 'read',
  },
  stnr: {
    why: 'An encyclopaedia says it is not easily seen or elicited in typical infants. No count of healthy infants was found.',
    sources: ['wikipedia-stnr'],
    basis: 'read',
  },
  tlr: {
    why: 'In 249 infants at routine visits those without an asymmetrical tonic neck response at 2 months had higher mean scores at one year, and the same is reported for this reflex, without shares. That absence alone is not treated as abnormal is recalled from teaching.',
    sources: ['shapiro-1981', 'common-practice'],
    basis: 'mixed',
  },
  galant: {
    why: 'Almost constantly present in 219 examinations of 62 newborns of 25 to 42 weeks. One set of class notes lists it as inconsistent and gives no count.',
    sources: ['robinson-1966', 'kumc-2012'],
    basis: 'read',
  },
  perez: {
    why: 'No count of healthy infants was found. That healthy newborns often answer only in part, or just cry, is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'flexor-withdrawal': {
    why: 'Constantly present in 219 examinations of 62 newborns of 25 to 42 weeks, and present in a group of 19 born at 22 to 26 weeks.',
    sources: ['robinson-1966', 'martakis-2017'],
    basis: 'read',
  },
  'crossed-extension': {
    why: 'In 219 examinations of 62 newborns it was too inconstant to be used for telling maturity. Class notes list it as inconsistent too.',
    sources: ['robinson-1966', 'kumc-2012'],
    basis: 'read',
  },
  'extensor-thrust': {
    why: 'No count of healthy infants and only one book with an age was found. That absence means nothing by itself is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'plantar-response': {
    why: 'Both great toes went up in 72.5 in 100 of 597 examinations of 256 healthy newborns, in 79.4 of infants of 1 to 3 months and in 31.1 of those of 9.1 to 12. A study of newborns calls the sign of limited use.',
    sources: ['gupta-2003', 'kumhar-2002', 'babinski-newborn-1976'],
    basis: 'read',
  },
  traction: {
    why: 'It appeared between 33 and 36 weeks regularly enough to tell maturity by (219 examinations of 62 newborns). That head lag is a separate finding, and not a sign that the traction response is absent, is recalled from teaching.',
    sources: ['robinson-1966', 'common-practice'],
    basis: 'mixed',
  },
  babkin: {
    why: 'A review says that some healthy infants show no response as newborns or in early infancy and that absence then is not necessarily abnormal.',
    sources: ['futagi-2013'],
    basis: 'read',
  },
  snout: {
    why: 'No count of healthy infants was found. That absence means nothing by itself is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  glabellar: {
    why: 'In 98 term newborns a tap between the brows reliably drew a blink, and it appears between 32 and 34 weeks regularly enough to tell maturity by. From birth to 2 months infants blinked to 2.7 taps on average before the response stopped, so only the first taps count.',
    sources: ['anday-1988', 'robinson-1966', 'zametkin-1979'],
    basis: 'read',
  },
  crawling: {
    why: 'Fifty healthy term newborns who had lain breech first scored significantly lower than 87 others for it. No count of newborns who do not crawl was found.',
    sources: ['sekulic-2009'],
    basis: 'read',
  },
  swimming: {
    why: 'It is not examined at the bedside, so it is not known how many healthy infants lack it: recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'positive-support': {
    why: 'In 47 infants born very preterm it was not uniformly present or complete even at term. A study of 249 infants at routine visits reports for it what it found for the asymmetrical tonic neck reflex: absence at 2 months went with higher mean scores at one year.',
    sources: ['allen-capute-1986', 'shapiro-1981'],
    basis: 'read',
  },
  stepping: {
    why: 'In 47 infants born very preterm it was not uniformly present or complete even at term. Fifty healthy term newborns who had lain breech first scored significantly lower for it than 87 others.',
    sources: ['allen-capute-1986', 'sekulic-2009'],
    basis: 'read',
  },
  'placing-leg': {
    why: 'In 47 infants born very preterm it was not uniformly present or complete even at term. No count of healthy term newborns was found.',
    sources: ['allen-capute-1986'],
    basis: 'read',
  },
  'placing-arm': {
    why: 'No count and no published age was found. That it is harder to elicit than leg placing is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'neck-righting': {
    why: 'It appeared between 34 and 37 weeks regularly enough to tell maturity by (219 examinations of 62 newborns). In 42 healthy newborns the trunk answered a turn of the head more often than by chance, which is less than always.',
    sources: ['robinson-1966', 'clopton-2000'],
    basis: 'read',
  },
  'body-righting-body': {
    why: 'No count of healthy infants was found. That it is expected in every infant who rolls is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'body-righting-head': {
    why: 'No count of healthy infants was found. That it is expected, and judged with the other ways of righting the head, is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'labyrinthine-righting': {
    why: 'In 33 healthy infants seen every month the head came upright in suspension from 3 to 8 months on, a few months earlier when sitting. Vision was allowed in that study.',
    sources: ['tachibana-1983'],
    basis: 'read',
  },
  'optical-righting': {
    why: 'In 33 healthy infants seen every month with the eyes open the head came upright in suspension from 3 to 8 months on, a few months earlier when sitting.',
    sources: ['tachibana-1983'],
    basis: 'read',
  },
  landau: {
    why: 'None of 30 healthy infants of 2 to 11 months hung limply at any visit. Full extension of head and trunk was seen in 45 in 100 at 4 months and in 90 in 100 between 5 and 10 months.',
    sources: ['cupps-1976'],
    basis: 'read',
  },
  amphibian: {
    why: 'No count was found and only one book with an age. That it is seldom examined and hard to elicit in a child who would rather move is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'protective-downward': {
    why: 'Of 190 healthy infants 188 had it when they first walked alone; at first standing 57 in 100 had not.',
    sources: ['jaffe-1994'],
    basis: 'read',
  },
  'protective-forward': {
    why: 'All of 190 healthy infants had it when they first walked alone. Of 484 infants born near term 21 in 100 had only an incomplete form by 12 months.',
    sources: ['jaffe-1994', 'romeo-2009'],
    basis: 'read',
  },
  'protective-sideways': {
    why: 'In preterm infants 8.1 in 100 had it at 6 months and 90 in 100 at 9 months, corrected.',
    sources: ['ohlweiler-2002'],
    basis: 'read',
  },
  'protective-backward': {
    why: 'No count of healthy infants was found. That it is expected once sitting is secure is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'protective-stepping': {
    why: 'In their first two weeks of walking healthy toddlers seldom step to recover, and not effectively. After more than 3 months of walking none fell on a moving platform, some by stepping and some with the feet in place.',
    sources: ['roncesvalles-2000'],
    basis: 'read',
  },
  'equilibrium-prone': {
    why: 'In 40 typical infants of 2 to 10 months the order of righting, protective and equilibrium reactions was fairly predictable (consistency index .727). That every healthy infant comes to this one is recalled from teaching.',
    sources: ['haley-1986', 'common-practice'],
    basis: 'mixed',
  },
  'equilibrium-supine': {
    why: 'In 40 typical infants of 2 to 10 months the order of righting, protective and equilibrium reactions was fairly predictable (consistency index .727). That every healthy infant comes to this one is recalled from teaching.',
    sources: ['haley-1986', 'common-practice'],
    basis: 'mixed',
  },
  'equilibrium-sitting': {
    why: 'In 40 healthy infants the muscles answered a moving seat in the right direction at every age from 1 to 5 months. That every healthy infant comes to the visible reaction is recalled from teaching.',
    sources: ['hedberg-2005', 'common-practice'],
    basis: 'mixed',
  },
  'equilibrium-quadruped': {
    why: 'No count of healthy infants was found. That every healthy infant who goes on hands and knees comes to it is recalled from teaching; some infants leave that position out.',
    sources: ['common-practice'],
    basis: 'memory',
  },
  'equilibrium-standing': {
    why: 'No count of healthy infants was found. That every healthy child who walks comes to it is recalled from teaching.',
    sources: ['common-practice'],
    basis: 'memory',
  },
};
