/** What the texts of ready-made talks are told by the atlas, so that no figure is typed into them. */
export interface TalkFacts {
  /** The short name of a reflex, as in the margin of its lane. */
  name(reflex: string): string;
  /** From the earliest to the latest printed age over the sources that date it. */
  comes(reflex: string): string;
  goes(reflex: string): string;
  /** How many sources have a window on it, and how many voices they are: `12 sources, 8 voices`. */
  sources(reflex: string): string;
  /** What one source prints: `Nelson: birth → 2-3 months`. */
  prints(source: string, reflex: string): string;
  /** How many pairs of sources support, overlap or contradict a step of a sequence (counted from 1). */
  tally(order: string, step: number): { supports: number; overlaps: number; contradicts: number };
  /** How the sequence is taught, by whom. */
  standing(order: string): string;
}

export interface StepText {
  caption: string;
  note: string;
}

/** A ready-made talk's words. There are as many steps as its views have. */
export interface TalkText {
  title: string;
  about: string;
  steps: readonly ((facts: TalkFacts) => StepText)[];
}
