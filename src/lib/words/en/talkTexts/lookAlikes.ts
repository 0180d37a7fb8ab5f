/** Look-alikes, in words. */
import type { TalkText } from './facts.ts';

export const lookAlikes: TalkText = {
  title: 'Look-alikes',
  about: 'Responses that look the same and are told apart by what elicits them, or by age.',
  steps: [
    () => ({
      caption: 'Alike to the eye, unlike in cause',
      note: 'How alike two responses look is computed from what each limb does. What elicits them and when they are seen play no part in that: those are what tells them apart. Each pair that follows is taken for one another easily.',
    }),
    (f) => ({
      caption: 'Moro or acoustic startle? One head drop, one sound',
      note: `The Moro follows a supported head drop, the startle a sound; using noise tests the startle. The startle is described in two ways: as flexion with a blink, the elbows flexed and the hands closed, and, as widely taught, with the arms extended and abducted, then drawn across, and a cry. In the second way the two are told apart by the stimulus alone, and by repetition: the startle fades, the Moro does not. ${f.prints('osullivan-handout', 'moro')}. ${f.prints('osullivan-handout', 'acoustic-startle')}. Support head and neck throughout; never drop freely.`,
    }),
    (f) => ({
      caption: 'Moro or traction? A drop, or a pull',
      note: `In the embrace the arms bend, as they do when the infant is drawn up by the forearms. Traction goes from ${f.goes('traction')}. Never pull at the wrists of an arm that may be injured.`,
    }),
    (f) => ({
      caption: 'Withdrawal or crossed extension? Watch the other leg',
      note: `In the one the touched leg bends; in the other the free leg bends, then straightens. Hold the knee of the touched leg, and leave the other free. Withdrawal goes from ${f.goes('flexor-withdrawal')}, crossed extension from ${f.goes('crossed-extension')}. Withdrawal takes a flick of the nail, crossed extension firm pressure; never a pin, and it should never hurt.`,
    }),
    (f) => ({
      caption: 'Labyrinthine or optical righting? Eyes covered or open',
      note: `The picture is one and the same. With the eyes open, sight may do it; only covered eyes leave it to the inner ear. Labyrinthine: ${f.comes('labyrinthine-righting')}. Optical: ${f.comes('optical-righting')}. Both stay for life. Hold the trunk firmly.`,
    }),
    (f) => ({
      caption: 'Neck on body or body on body? Head turned, or hips rolled',
      note: `The whole trunk follows a turn of the head in the one; the part that was turned leads in the other. On the first there are windows of ${f.sources('neck-righting')}, and they are far apart: look at its lane. Turn slowly.`,
    }),
    (f) => ({
      caption: 'Tonic labyrinthine or Landau? Lying, or held in the air',
      note: `The two share extension only while the one lies supine. The tonic labyrinthine reflex extends in supine and flexes in prone, and goes from ${f.goes('tlr')}; the Landau extends in ventral suspension, and comes from ${f.comes('landau')}. So in prone the first flexes where the second extends. Keep nose and mouth free.`,
    }),
    (f) => ({
      caption: 'Crawling or swimming? On a surface, or held in the air',
      note: `Limbs alternate in both. Crawling: ${f.goes('crawling')}. Swimming: ${f.goes('swimming')}. Swimming is watched held in the air or not at all, never in water.`,
    }),
  ],
};
