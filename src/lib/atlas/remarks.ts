/**
 * What is said beside a claim: a note, and what was corrected against the printed words and why. By
 * source and reflex, one for each row of the source on that reflex, in its order. Loaded when it is first
 * shown.
 */
import type { Claim } from './types.ts';

export type Remark = Pick<Claim, 'note' | 'correction'>;

export const REMARKS: Readonly<Record<string, Readonly<Record<string, readonly Remark[]>>>> = {
  'allen-capute-1986': {
    moro: [
      { correction: 'the majority is not all: the age by which every infant has it is not given' },
    ],
    atnr: [
      { correction: 'the majority is not all: the age by which every infant has it is not given' },
    ],
    galant: [
      { correction: 'the majority is not all: the age by which every infant has it is not given' },
    ],
    'positive-support': [
      {
        note: 'The related 1985 abstract words it as starting at 30 weeks in some.',
        correction:
          'occasional before 30 weeks begins at the youngest age examined, 25 weeks; not uniform at term is not complete at 40 weeks',
      },
    ],
    stepping: [
      {
        correction:
          'occasional before 30 weeks begins at the youngest age examined, 25 weeks; not uniform at term is not complete at 40 weeks',
      },
    ],
    'placing-leg': [
      {
        correction:
          'occasional before 30 weeks begins at the youngest age examined, 25 weeks; not uniform at term is not complete at 40 weeks',
      },
    ],
  },
  'birnholz-1983': {
    'acoustic-startle': [{ note: 'Fetal blink-startle to vibroacoustic stimulus.' }],
  },
  'stumm-2008': {
    sucking: [{ note: 'Attributed by the paper to Hack 1985.' }],
  },
  'miller-2003': {
    swallowing: [{ note: '15 weeks is where the study began, not an onset.' }],
  },
  'coryell-cardinali-1979': {
    atnr: [{ note: 'Study ended at 12 weeks.' }],
  },
  'clopton-2000': {
    atnr: [{ note: 'Passive head turn; shown more often than chance, at group level.' }],
  },
  'futagi-suzuki-1999': {
    'plantar-grasp': [
      {
        correction:
          'The span 0 to 6 months is how long every infant was found positive, not a time of appearing: two other sources find the response in all infants from 25 weeks. Read as there by term.',
      },
    ],
  },
  'olhweiler-2005': {
    'palmar-grasp': [
      {
        correction:
          '97.3 in 100 had lost it at 6 months, so it goes before: from 3 months, the youngest age examined; what was found then was not read',
      },
    ],
    'plantar-grasp': [
      { note: 'Lower bound: the study ended at 12 months with the reflex still found.' },
    ],
    moro: [
      {
        correction:
          '97.3 in 100 had lost it at 6 months, so it goes before: from 3 months, the youngest age examined; what was found then was not read',
      },
    ],
    'positive-support': [
      {
        correction:
          '97.3 in 100 had lost it at 6 months, so it goes before: from 3 months, the youngest age examined; what was found then was not read',
      },
    ],
  },
  'snir-2010': {
    'dolls-eye': [
      {
        correction:
          'at 11.5 weeks 75 in 100 had already lost it, so it goes from the youngest age examined on, 1 week',
      },
    ],
  },
  'cupps-1976': {
    landau: [{ note: 'Onset read from the per-age share, not a single age.' }],
  },
  'tachibana-1983': {
    'labyrinthine-righting': [{ note: 'Vision allowed, so optical righting also acted.' }],
  },
  'jaffe-1994': {
    'protective-downward': [
      { note: 'Prospectively measured mean, much later than the taught 4 months.' },
    ],
    'protective-forward': [{ note: 'Prospectively measured mean.' }],
  },
  'romeo-2009': {
    'protective-forward': [
      { note: 'An incomplete form came first in most infants. Study ended at 12 months.' },
    ],
  },
  'futagi-2012': {
    'palmar-grasp': [{}, { note: 'Disappearance figure recalled from a later section.' }],
    moro: [
      { correction: 'the majority is not all: the age by which every infant has it is not given' },
      { note: 'Disappearance figure recalled from a later section.' },
    ],
  },
  'futagi-2013': {
    babkin: [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
  },
  'zafeiriou-2004': {
    'palmar-grasp': [
      {
        note: "Read in study notes that repeat the review's table without naming it; start at birth from the same notes.",
      },
    ],
    'plantar-grasp': [
      {
        note: "Read in study notes that repeat the review's table without naming it; start at birth from the same notes.",
      },
    ],
    atnr: [
      {
        note: "Read in study notes that repeat the review's table without naming it; start at birth from the same notes.",
      },
    ],
    galant: [
      {
        note: "Read in study notes that repeat the review's table without naming it; start at birth from the same notes.",
      },
    ],
  },
  'statpearls-moro': {
    moro: [
      {
        note: 'Low end is the start of fading, not disappearance.',
        correction: 'usual is not all: the age by which every infant has it is not given',
      },
    ],
  },
  'dreeben-2008': {
    'neck-righting': [{ note: 'Onset given as birth; end not given in the part read.' }],
    'protective-downward': [{ note: 'Includes an arm version.' }],
  },
  'molnar-handout': {
    'flexor-withdrawal': [
      {
        note: "The printout gives one figure for both books; it is also the O'Sullivan figure, so do not count the two as independent.",
      },
    ],
    'crossed-extension': [
      {
        note: "The printout gives one figure for both books; it is also the O'Sullivan figure, so do not count the two as independent.",
      },
    ],
    traction: [
      {
        note: "The printout gives one figure for both books; it is also the O'Sullivan figure, so do not count the two as independent.",
      },
    ],
  },
  'osullivan-handout': {
    'neck-righting': [{ note: 'The later, segmental form rather than the newborn log roll.' }],
  },
  'fiorentino-1963': {
    'flexor-withdrawal': [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
    'crossed-extension': [
      {
        note: 'The crossed extension row was cut off in the passage read; the neighbouring spinal-level rows say 2 months.',
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
    'extensor-thrust': [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
    'positive-support': [
      {
        note: 'Recalled as normal from 3 to 8 months, that is a later reaction than the newborn one.',
      },
    ],
    amphibian: [{ note: 'From memory; no second source.' }],
  },
  nelson: {
    rooting: [
      {
        correction:
          'less prominent does not mean integrated: the words say from when it fades and give no end',
      },
    ],
  },
  bates: {
    'placing-leg': [{ note: 'Printed with stepping.' }],
    landau: [{ note: 'Bates describes the newborn straightening response under the same name.' }],
  },
  'common-practice': {
    perez: [{ note: 'No published timing found. Commonly taught figure.' }],
    snout: [{ note: 'Age poorly documented; treat as a guess.' }],
    crawling: [{ note: 'Little published timing found; treat with care.' }],
    'placing-arm': [{ note: 'Little published timing was found for the arm.' }],
  },
  'devries-1982': {
    sucking: [{ note: 'Fetal movement, not the tested newborn response.' }],
  },
  beststart: {
    rooting: [
      { note: 'The shortest window found: counted as replaced by voluntary head turning.' },
    ],
    sucking: [{ correction: 'voluntary after an age does not mean integrated by that age' }],
  },
  cincinnati: {
    moro: [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
  },
  'hpo-neck': {
    'neck-righting': [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
  },
  'physiopedia-tlr': {
    tlr: [{ note: 'Credits Capute; probably reflects a graded clinical score.' }],
  },
  'stedman-startle': {
    'acoustic-startle': [{ note: 'Treats startle and Moro as the same.' }],
  },
  'pediatriceducation-2020': {
    rooting: [{ note: 'Awake range 3-4; sleeping infants to 7-8.' }],
    sucking: [{ note: 'Awake range 3-4; sleeping infants to 7-8.' }],
  },
  'nyqvist-1999': {
    rooting: [
      { note: 'Rooting at first contact with the breast at every starting age, 27.9-35.9 weeks.' },
    ],
  },
  'mizuno-2003': {
    sucking: [{ note: 'Maturation range; sucking was already present at 32 weeks.' }],
    swallowing: [{ note: 'Age of coordination with breathing, not of swallowing itself.' }],
  },
  'gewolb-2001': {
    sucking: [{ note: 'Maturation range, tied to postmenstrual, not postnatal, age.' }],
    swallowing: [
      { note: '32 weeks is the first age studied. Swallow rhythm settles before suck rhythm.' },
    ],
  },
  'andrews-1994': {
    'flexor-withdrawal': [
      { note: '27.5 weeks is the youngest age studied. Threshold rises with age.' },
    ],
  },
  'martakis-2017': {
    'flexor-withdrawal': [
      { note: 'The whole group was born at these weeks; an upper limit for onset.' },
    ],
  },
  'kisilevsky-2000': {
    'acoustic-startle': [{ note: 'Airborne sound at 90-110 dB through the abdomen.' }],
  },
  'shapiro-1981': {
    atnr: [
      {
        note: 'Low end: most no longer show it at 6 months; high end: 8 percent still do at 12. Any response counted.',
      },
    ],
  },
  'okamoto-2001': {
    'protective-downward': [
      { note: 'Muscle recording during stepping, far earlier than the visible reaction.' },
    ],
  },
  'widstrom-2011': {
    rooting: [{ note: 'Spontaneous rooting in the active phase after birth.' }],
  },
  'hadders-algra-2005': {
    'equilibrium-sitting': [
      {
        note: 'Muscle recordings: adjustments in the right direction exist from 1 month and become adaptable at 6. Not a tilt-board reaction.',
      },
    ],
  },
  'roncesvalles-2000': {
    'protective-stepping': [{ note: 'Dated by walking experience, not by age.' }],
  },
  'gpnotebook-crossed': {
    'crossed-extension': [
      {
        note: '36 weeks dates the adduction part only.',
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
  },
  'wikipedia-stnr': {
    stnr: [
      {
        note: 'The same article also says significantly diminished by 2-3 years. Start age is when it is fully developed, not first seen.',
        correction: 'fully developed by an age says nothing of when it is first seen',
      },
    ],
  },
  'wikipedia-es-stepping': {
    stepping: [{ note: 'An older version of the article says the 4th to 6th month.' }],
  },
  'peel-health': {
    rooting: [{ correction: 'integrated after an age does not mean integrated by that age' }],
    sucking: [{ correction: 'integrated after an age does not mean integrated by that age' }],
  },
  'sadurni-2008': {
    'positive-support': [{ note: 'Described together with automatic walking.' }],
  },
  'garcia-sanchez': {
    sucking: [{ note: 'Printed for sucking and swallowing together.' }],
    'acoustic-startle': [
      { note: 'Blink to a loud sound at 30 cm (cochleopalpebral), one part of the startle.' },
    ],
    'dolls-eye': [{ note: 'The end was cut short in the passage read.' }],
    glabellar: [{ note: 'Named naso-palpebral: tap on the bridge of the nose.' }],
  },
  'lally-valentine': {
    'flexor-withdrawal': [
      {
        note: 'Counts the protective withdrawal itself, which stays; other rows date the uncontrolled infant form.',
      },
    ],
  },
  'saint-anne-dargassies': {
    'crossed-extension': [{ note: 'Dates the completion of the response, not the first flexion.' }],
  },
  'ubc-kin355': {
    stepping: [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
  },
  'brown-medpeds': {
    moro: [
      {
        correction:
          'the words give the latest age alone, so the response may go at any time before it',
      },
    ],
    'protective-forward': [{ note: 'One range for forward, sideways and backward.' }],
    'protective-sideways': [{ note: 'One range for forward, sideways and backward.' }],
    'protective-backward': [{ note: 'One range for forward, sideways and backward.' }],
  },
  'wenzel-1978': {
    'protective-forward': [{ note: 'The parachute. Quickest development around 6.3 months.' }],
  },
  'futagi-1987': {
    babkin: [
      {
        note: 'The fourth month of life runs from 3 to 4 months. Preterm infants by corrected age did not differ.',
        correction: '"until" gives the latest age alone, so it may go before the fourth month',
      },
    ],
  },
};
