/** The clinician's side of the family's page. What the family reads is in family.ts. */
import type { Pronoun } from '../../case/family.ts';

export const familyPage = {
  title: 'For the family',
  intro: 'This is the page as it is given. Touch any sentence to put it in your own words.',
  show: 'Show to the family',
  print: 'Print',
  choices: 'Contents and language',
  sheets: (n: number, most: number): string => {
    const numbers = ['', 'one sheet', 'two sheets'];
    const takes = `Printed, it takes ${numbers[n] ?? `${n} sheets`} of A4 or Letter.`;
    return n > most
      ? `${takes} Two are enough for a family to keep: shorten your text, or choose fewer reflexes.`
      : takes;
  },
  language: 'Language',
  about: 'About',
  course: 'All visits so far',
  visit: (date: string): string => `The visit of ${date}`,
  called: 'Name used by the family',
  calledHelp:
    'Left empty, the page says “your baby”. The name or code of the record is never used.',
  pronoun: 'Spoken of as',
  pronouns: {
    name: 'by name, or “baby”',
    she: 'she',
    he: 'he',
    they: 'they',
  } satisfies Readonly<Record<Pronoun, string>>,
  clinic: 'Clinic’s name',
  phone: 'Clinic’s number',
  clinicHelp: 'Saved on this machine for every child. Left empty, the page has a line to write on.',
  clinicOfCase: 'Saved with this child.',
  told: 'Reflexes on the page',
  toldBy: { us: 'Chosen by what matters most today.', you: 'Chosen by you.' },
  choose: 'Choose again for me',
  most: (n: number): string => `${n} at most. Remove one to add another.`,
  few: 'Three or more make a fuller picture.',
  nothing: 'Nothing has been tested yet, so there is nothing to choose from.',
  discuss: 'to be discussed',
  leftOff: (names: readonly string[]): string =>
    `To be discussed, and left off: ${names.join('; ')}. The page says that you want to talk about ${names.length === 1 ? 'it' : 'them'}.`,
  edit: 'Sentence, to be put in your own words',
  yours: 'Your text',
  ours: 'Reset to standard text',
  oursOf: (text: string): string => `Reset to standard text: ${text}`,
  changed: 'The standard text here has changed since you wrote this:',
  aloud: 'Read aloud in place of the picture; not printed',
  unused: 'Your sentences that no longer have a place on this page',
  elsewhere: (n: number, about: string, language: string): string =>
    `${n === 1 ? 'One of your sentences is' : `${n} of your sentences are`} on another page and not here: ${about}, ${language}.`,
  orphans: 'Text was saved for a visit that is no longer here.',
  clear: 'Remove them',
  notKept: 'Not saved yet.',
};
