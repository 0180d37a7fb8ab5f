import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['optical righting reaction', 'visual head righting'],
  sides: 'Tip to each side, then forward and back, eyes open.',
  position: 'Held upright or in prone suspension with the eyes open and something to look at.',
  stimulus: 'Tip the body to one side, slowly.',
  positive: 'The head returns toward vertical so that the eyes level with the horizon.',
  pitfalls: [
    'Testing a sleepy infant or a room with nothing to see.',
    'Reading it separately from labyrinthine righting without covering the eyes for the other test.',
  ],
  purpose:
    'Uses vision to keep the face upright; overtakes the other righting reactions in daily life.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Read with vision and general head control.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A steady head tilt prompts an eye and neck check.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
