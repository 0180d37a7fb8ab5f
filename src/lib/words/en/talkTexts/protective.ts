/** Protective reactions, in words. */
import type { TalkText } from './facts.ts';

export const protective: TalkText = {
  title: 'Protective reactions that stay for life',
  about: 'Hands and feet that catch a fall: their directions, their order, and what is measured.',
  steps: [
    () => ({
      caption: 'They appear, and stay for life',
      note: 'Four directions, and no ridge comes down again. A response that stays for life can be late or not elicited; it cannot persist too long.',
    }),
    (f) => ({
      caption: 'Downward: the legs make ready to land',
      note: `From ${f.comes('protective-downward')}. Lowered toward a surface, the legs extend and abduct. Hold the trunk firmly with both hands and lower within them; never drop.`,
    }),
    (f) => ({
      caption: 'Forward: the arms reach for the ground',
      note: `From ${f.comes('protective-forward')}, over ${f.sources('protective-forward')}. Two tests go by that name: propping, when an infant who sits is pushed forward, taught from about 6 months; and the parachute, when an infant in ventral suspension is tipped toward a surface, measured at about 9. Open hands make it complete; fisted hands do not. One quick, short tip within your own hands; never drop.`,
    }),
    (f) => ({
      caption: 'Sideways: one arm props',
      note: `From ${f.comes('protective-sideways')}. Test to both sides and compare. Push just far enough to unbalance: a slow tilt tests equilibrium. A hand ready on the other side.`,
    }),
    (f) => ({
      caption: 'Backward: the last to appear',
      note: `From ${f.comes('protective-backward')}. Always guard from behind, over a soft surface: the back of the head is what falls. Push just far enough to unbalance: a slow tilt tests equilibrium.`,
    }),
    (f) => {
      const one = f.tally('protective-directions', 1);
      const two = f.tally('protective-directions', 2);
      return {
        caption: 'Forward, then sideways, then backward',
        note: `${f.standing('protective-directions')} Forward before sideways: ${one.supports} pairs of windows support it, ${one.overlaps} overlap, ${one.contradicts} contradict it. Sideways before backward: ${two.supports} support, ${two.overlaps} overlap, ${two.contradicts} contradict.`,
      };
    },
    (f) => ({
      caption: 'Legs before arms? Taught one way, measured another',
      note: `${f.standing('downward-then-forward')} ${f.prints('fiorentino-1963', 'protective-forward')}. A mean measured by Jaffe et al. 1994 is not a window: it is shown as context and never used for judging.`,
    }),
    (f) => ({
      caption: 'First the arms catch, then the child walks',
      note: `${f.standing('forward-before-walking')} An association, not a rule for one child. Not eliciting it near its time is a reason to recheck; follow local pathways and licensed practice.`,
    }),
  ],
};
