/** Everything a player says, given to it: sentences live elsewhere. */
export interface PlayerWords {
  /** Names the group of controls. */
  readonly controls: string;
  readonly play: string;
  readonly hold: string;
  /** What the picture shows at a moment, in a sentence, by its place in the list of moments. */
  readonly describe: (moment: number) => string;
  /** The short name of a moment, by its place in the list of moments. */
  readonly name: (moment: number) => string;
}
