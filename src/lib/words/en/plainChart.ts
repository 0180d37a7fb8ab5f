/** English for the page of the chart without a child. */

export const plainChart = {
  title: 'When each reflex appears and integrates',
  lead: 'Published ages of infant reflexes and postural reactions, before and after term.',
  keys: 'Drag or press arrows to move the age; + and − zoom, 0 shows the whole axis; up and down go through the lanes, Enter opens one.',
};
