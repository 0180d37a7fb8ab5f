/** How firmly each order is taught, in words; figures as printed. Loaded when it is first shown. */
export const STANDING: Readonly<Record<string, string>> = {
  'arms-then-legs': 'Common practice, no source. The windows of the sources agree with it.',
  'protective-directions':
    'Taught with forward at 5-6, sideways at 7-8, backward at 9-10 months (clinic page 2015); forward 6-9, sideways 7, backward 9-10 (clinic page 2021); forward 6-7, sideways 7-8, backward 9-12 (health explainer).',
  'downward-then-forward':
    'Taught as legs at 4 months, arms at 6-9; measured means in 190 healthy infants run the other way (arms 8.9, legs 9.2 months).',
  'moro-before-sitting':
    'An association in 177 infants (1982), not found in 156 (1997). The windows overlap, so the order is not strict.',
  'atnr-before-rolling': 'An association in 177 infants (1982), not found in 156 (1997).',
  'palmar-before-reaching':
    'A paper of 1948 has the grasp integrated as reaching begins; in many sources the grasp lasts longer.',
  'stnr-before-crawling':
    'Secondary sources. The response is seldom seen in typical infants, so its absence means nothing by itself.',
  'plantar-before-standing':
    'Common practice for standing and walking; a paper of 1948 links the fading to crawling instead.',
  'forward-before-walking':
    'Of 190 healthy infants none walked before the reaction of the arms; 49 per cent stood alone without it.',
};
