/** Why a source and the one it has its ages from are one voice, by the source that took them over. */
export const WHY_ONE_VOICE: Readonly<Record<string, string>> = {
  'futagi-2012':
    'Its introduction gives the ages before term (25 weeks; some at 25, the majority by 30) with the 1986 study as reference 1. Read in the open-access paper.',
  'statpearls-moro':
    'The chapter prints the two ages of the study, 25 and 30 weeks, in its term postconceptional age and with a reference number; the reference list was not in the passage read.',
  'molnar-handout':
    'Both were read from one printout with a single column of onset ages for the two books: every onset is the same, and three ends. Which book printed the onset first is not known.',
};
