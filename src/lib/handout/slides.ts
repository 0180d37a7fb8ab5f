/** A family's page one idea at a time: what stands on the screen together, in order. */
import type { SentenceId } from '../words/family.ts';
import type { FamilyItem, FamilyPage, Sentence } from './model.ts';

export interface SlidePart {
  label: string;
  sentences: readonly string[];
  /** They stand beneath each other as a list. */
  isList?: boolean;
}

export interface Slide {
  /** Stable within a page. */
  id: string;
  heading: string;
  /** Said in this order; `label` stands small above the sentences it belongs to. */
  parts: readonly SlidePart[];
  /** The reflex whose figure moves beside the words. */
  item?: FamilyItem;
  /** The child's line on its bands. */
  isChart?: boolean;
  /** Beneath the rest, small: of whose words these are, and that the child is invented. */
  notes?: readonly string[];
}

/** More sentences than this are more than one idea; what is listed stays together. */
const MOST = 4;
const MOST_LISTED = 8;

/** Here begin the two ways to count an age. */
const TWO_AGES: SentenceId = 'who.age-birth';

/** After a sentence in the clinician's words, as on the page. */
const MARK = '*';

const textsOf = (sentences: readonly Sentence[]): string[] =>
  sentences.map(({ text, theirs }) => `${text}${theirs ? MARK : ''}`);

const isMarked = ({ heading, parts }: Slide): boolean =>
  [heading, ...parts.flatMap(({ sentences }) => sentences)].some((text) => text.endsWith(MARK));

/** Sentences of one section over as many slides as they need, shared out evenly: none where there are none. */
function dealt(id: string, heading: string, sentences: readonly string[]): Slide[] {
  const isListed = id === 'urgent' || id === 'talk';
  const slides = Math.ceil(sentences.length / (isListed ? MOST_LISTED : MOST));
  const each = Math.ceil(sentences.length / slides);
  return Array.from({ length: slides }, (_, at) => ({
    id: at === 0 ? id : `${id}-${at + 1}`,
    heading,
    parts: partsOf(id, sentences.slice(at * each, (at + 1) * each), at === 0),
  }));
}

/** What is to be talked about is a list, led by its first sentence. */
function partsOf(id: string, sentences: readonly string[], isFirst: boolean): SlidePart[] {
  const label = '';
  if (id !== 'talk') return [{ label, sentences }];
  const lead = isFirst ? 1 : 0;
  return [
    ...(isFirst ? [{ label, sentences: sentences.slice(0, lead) }] : []),
    { label, sentences: sentences.slice(lead), isList: true },
  ];
}

/** What was done and seen with one reflex; then what it means, and what comes next. */
function ofItem(item: FamilyItem, { labels }: FamilyPage): Slide[] {
  const [heading = ''] = textsOf([item.name]);
  const id = `reflex-${item.reflex.id}`;
  const seen = [
    { label: labels.did, sentences: textsOf([item.did]) },
    { label: labels.saw, sentences: textsOf(item.saw) },
  ];
  const means = [
    { label: labels.means, sentences: textsOf(item.means) },
    { label: labels.next, sentences: textsOf(item.next) },
  ].filter(({ sentences }) => sentences.length > 0);
  return [
    { id, heading, item, parts: seen },
    ...(means.length > 0 ? [{ id: `${id}-means`, heading, item, parts: means }] : []),
  ];
}

/** Every sentence of the page stands on exactly one slide; each reflex has its own, the chart after them. */
export function slidesOf(page: FamilyPage): Slide[] {
  const { edited, invented } = page.labels;
  return slidesWithin(page).map((slide, at) => ({
    ...slide,
    notes: [
      ...(at === 0 && page.invented ? [invented] : []),
      ...(isMarked(slide) ? [`${MARK} ${edited}`] : []),
    ],
  }));
}

function slidesWithin(page: FamilyPage): Slide[] {
  return page.sections.flatMap(({ id, heading, sentences, items }): Slide[] => {
    const texts = textsOf(sentences);
    const said = id === 'clinic' ? clinicLines(page, texts) : texts;
    const [headed = ''] = textsOf([heading]);
    // the two ways to count an age stand on one slide
    const ages = sentences.length > MOST ? sentences.findIndex(({ key }) => key === TWO_AGES) : -1;
    const own =
      ages > 0
        ? [
            ...dealt(id, headed, said.slice(0, ages)),
            ...dealt(`${id}-ages`, headed, said.slice(ages)),
          ]
        : dealt(id, headed, said);
    if (id !== 'looked' || items.length === 0) return own;
    const chart: Slide = {
      id: 'chart',
      heading: page.chart.label,
      parts: [],
      isChart: true,
    };
    return [...own, ...items.flatMap((item) => ofItem(item, page)), chart];
  });
}

function clinicLines({ clinic, labels }: FamilyPage, texts: readonly string[]): string[] {
  if (!clinic) return [...texts];
  return [
    ...texts,
    ...(clinic.name ? [`${labels.clinic}: ${clinic.name}`] : []),
    ...(clinic.phone ? [`${labels.phone}: ${clinic.phone}`] : []),
  ];
}

/** What is read aloud: the heading and all that stands beneath, a full stop after each. */
export const spokenOf = (slide: Slide, { chart }: FamilyPage): string =>
  [
    slide.heading,
    ...slide.parts.flatMap(({ label, sentences }) => (label ? [label, ...sentences] : sentences)),
    ...(slide.isChart ? chart.bands.map(({ name, spoken }) => `${name}. ${spoken.text}`) : []),
  ]
    .map((text) => (text.endsWith(MARK) ? text.slice(0, -MARK.length) : text))
    .map((text) => (/[.!?…:]$/.test(text) ? text : `${text}.`))
    .join(' ');
