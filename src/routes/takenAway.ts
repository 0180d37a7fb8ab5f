/** What can be taken away from a page. */
export interface TakenAway {
  /** What is drawn, when it is wanted. */
  of: () => HTMLElement | null | undefined;
  title: string;
  /** What its signs mean, beside what the page itself marks as a legend. */
  legend?: string | (() => string);
  /** Short names of the sources it rests on; none for what rests on no printed age. */
  sources?: readonly string[];
}
