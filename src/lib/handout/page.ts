/**
 * A family's page, made from one child's record and its judgement, and from nothing else: so that
 * twins never mix. What asks to be discussed is always on it, in its own words or as something to
 * be talked about. What we think and what happens next, with its date, come first.
 */
import { LANGUAGES, NO_FAMILY, type PageChoice } from '../case/family.ts';
import { isPast } from './about.ts';
import { chartOf } from './chart.ts';
import { choose } from './choose.ts';
import { itemOf } from './items.ts';
import type { Candidate, FamilyPage, FamilySection, PageInput, Sentence } from './model.ts';
import { aheadOf, nextSection } from './next.ts';
import {
  closingSections,
  helpSection,
  lookedSentences,
  section,
  talkSection,
  todaySection,
  whoSection,
} from './sections.ts';
import { Speaker } from './speaker.ts';
import { standsOf } from './stands.ts';

const NOTHING_CHOSEN: PageChoice = { visit: '', chosen: null, edits: [] };

const isFilled = ({ name, phone }: { name: string; phone: string }): boolean =>
  name !== '' || phone !== '';

/** The page of one visit, or of the whole course. */
export function familyPage(input: PageInput): FamilyPage {
  const { record, visits, shown } = input;
  const family = record.family ?? NO_FAMILY;
  const key = shown ? shown.visit.id : '';
  const known = new Set(['', ...record.visits.map(({ id }) => id)]);
  const settled = family.pages.find(({ visit }) => visit === key) ?? NOTHING_CHOSEN;
  const language = input.language ?? family.language;
  const say = new Speaker(language, family, settled.edits);
  const base = shown ?? visits.at(-1);
  const stands = standsOf(visits, shown);
  const { told, toTalkAbout, isChosen } = choose(stands, settled.chosen);
  const [looked, past] = [stands.length > 0, isPast(input)];
  const ahead = base ? aheadOf(input, base.visit.on) : undefined;
  const items = ahead ? told.map((one) => itemOf(say, one, ahead)) : [];
  const next = ahead && nextSection(say, ahead, stands);
  const sections: FamilySection[] = [
    ...(looked && ahead ? [todaySection(say, stands, ahead)] : []),
    ...(next && next.sentences.length > 0 ? [next] : []),
    ...(base ? [whoSection(say, input, base)] : []),
    section(say, 'looked', lookedSentences(say, stands, told.length), items),
    ...(toTalkAbout.length > 0 ? [talkSection(say, toTalkAbout)] : []),
    helpSection(say, base?.ages, looked),
    ...closingSections(say, looked),
  ];
  const { title, labels, tag } = say.words;
  const clinic = family.clinic ?? input.clinic;
  const page = {
    language,
    tag,
    visit: key,
    invented: record.child.invented,
    title: say.say('title', shown || visits.length === 0 ? title.visit : title.course),
    sections,
    chart: chartOf(say, input, base, told),
    clinic: clinic && isFilled(clinic) ? clinic : null,
    labels: past ? { ...labels, means: say.words.meantThen } : labels,
    candidates: stands.map(({ reflex, attention }): Candidate => {
      const isTold = told.some((one) => one.reflex === reflex);
      return { reflex, name: say.nameOf(reflex), attention, isTold };
    }),
    isChosen,
    elsewhere: family.pages
      .filter(({ visit }) => known.has(visit))
      .flatMap(({ visit, edits }) =>
        LANGUAGES.map((of) => ({
          visit,
          language: of,
          count: edits.filter((edit) => edit.language === of).length,
        })),
      )
      .filter((one) => one.count > 0 && (one.visit !== key || one.language !== language)),
    orphans: family.pages.filter(({ visit }) => !known.has(visit)),
  };
  return { ...page, unused: say.unused() };
}

/** Every sentence of a page in the order it is read, with those of the chart last. */
export function sentencesOf({ title, sections, chart }: FamilyPage): Sentence[] {
  return [
    title,
    ...sections.flatMap(({ heading, sentences, items }) => [
      heading,
      ...sentences,
      ...items.flatMap(({ name, did, saw, means, next }) => [name, did, ...saw, ...means, ...next]),
    ]),
    ...chart.bands.map(({ spoken }) => spoken),
  ];
}
