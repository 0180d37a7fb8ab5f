/** English for exported figures. */
import { listed } from './body.ts';

export const takeAway = {
  title: 'Export figure',
  format: 'As',
  formats: { svg: 'SVG, sharp at any size', png: 'PNG' },
  scale: 'Size',
  scales: (scale: number): string => `${scale}×`,
  ground: 'Background',
  grounds: { plain: 'plain', transparent: 'transparent' },
  shade: 'Colours',
  shades: { light: 'for a light background', dark: 'for a dark background' },
  around: 'With title, legend and sources',
  preview: (title: string): string => `The figure as it will be: ${title}`,
  size: (width: number, height: number): string => `${width} × ${height} pixels`,
  save: 'Save',
  copy: 'Copy',
  close: 'Close',
  saved: (name: string): string => `Saved as ${name}.`,
  copied: 'Copied.',
  cannotCopy: 'This browser does not allow a page to copy such a figure. Save it instead.',
  copyFailed: 'The figure could not be copied. Save it instead.',
  tooLarge: 'At this size the browser cannot draw it. Choose a smaller one, or SVG.',
  failed: 'The figure could not be made. Reload the page and try again.',
  letters:
    'A saved SVG contains its fonts, a copied one only names them. Presentation programs may replace the fonts of an SVG. A PNG keeps them.',
};

const MADE = 'Drawn with Tidemark, a reading of published ages, not a diagnosis.';

/** What the figure rests on, and what drew it. Sources by their short names, each once. */
export function citation(sources: readonly string[]): string {
  const each = [...new Set(sources)].toSorted((a, b) => a.localeCompare(b, 'en'));
  return each.length === 0 ? MADE : `After: ${each.join('; ')}. ${MADE}`;
}

/** What the figures are called where they are exported. */
export const titles = {
  sources: (name: string): string => `${name}: when, by each source`,
  compared: (names: readonly string[]): string => `${listed(names)}, side by side`,
  comparedChart: (names: readonly string[]): string => `${listed(names)} by age`,
  orders: 'Developmental sequences of reflexes and reactions',
};

export const legends = {
  sources: 'The height says how strongly the sources expect it. Below, the window of each source.',
  quarrel:
    'Each window is one source. The line below is drawn where any two sources differ, darker where more of them do.',
  step: 'Each bar is the window of one source: what comes before, then what comes after.',
  orders:
    'Each step with its windows: thin, from the earliest to the latest printed age; thick, the middle source.',
};
