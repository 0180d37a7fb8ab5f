/** Look-alikes, in words. */
import type { TalkText } from './facts.ts';

export const lookAlikes: TalkText = {
  title: 'Look-alikes',
  about: 'Responses that look the same and are told apart by what elicits them, or by age.',
  steps: [
    () => ({
      caption: 'Alike in appearance, different in stimulus',
      note: 'How alike two responses look is computed from what each limb does. What elicits them and when they are seen play no part in that, and are what tells them apart. The pairs that follow are easily confused.',
    }),
    (f) => ({
      caption: 'Moro or acoustic startle? One head drop, one sound',
      note: `The Moro follows a supported head drop, the startle a sound; using noise tests the startle. The startle is described in two ways: as flexion with a blink, the elbows flexed and the hands closed, and, as widely taught, with the arms extended and abducted, then drawn across, and a cry. In the second way the two are told apart by the stimulus alone, and by repetition: the startle fades, the Moro does not. ${f.prints('osullivan-handout', 'moro')}. ${f.prints('osullivan-handout', 'acoustic-startle')}. Support head and neck throughout; never drop freely.`,
    }),
    (f) => ({
      caption: 'Moro or traction? A drop, or a pull',
      note: `In the embrace the arms flex, as they do when the infant is drawn up by the forearms. Traction integrates at ${f.goes('traction')}. Never pull at the wrists of an arm that may be injured.`,
    }),
    (f) => ({
      caption: 'Withdrawal or crossed extension? Watch the other leg',
      note: `In withdrawal the touched leg flexes; in crossed extension the free leg flexes, then extends. For crossed extension hold the knee of the touched leg, and leave the other free. Withdrawal integrates at ${f.goes('flexor-withdrawal')}, crossed extension at ${f.goes('crossed-extension')}. Withdrawal takes a flick of the nail, crossed extension firm pressure; never a pin, and it should never hurt.`,
    }),
    (f) => ({
      caption: 'Labyrinthine or optical righting? Eyes covered or open',
      note: `The response looks the same. With the eyes open, vision may produce it; only covered eyes leave it to the labyrinth. Labyrinthine: ${f.comes('labyrinthine-righting')}. Optical: ${f.comes('optical-righting')}. Both stay for life. Hold the trunk firmly.`,
    }),
    (f) => ({
      caption: 'Neck on body or body on body? Head turned, or hips rolled',
      note: `In the first the whole trunk follows a turn of the head; in the second the part that was turned leads. On the first there are windows of ${f.sources('neck-righting')}, and they are far apart: look at its lane. Turn slowly.`,
    }),
    (f) => ({
      caption: 'Tonic labyrinthine or Landau? Lying, or in ventral suspension',
      note: `The two share extension only while the first is tested supine. The tonic labyrinthine reflex extends in supine and flexes in prone, and integrates at ${f.goes('tlr')}; the Landau extends in ventral suspension, and appears at ${f.comes('landau')}. So in prone the first flexes where the second extends. Keep nose and mouth free.`,
    }),
    (f) => ({
      caption: 'Crawling or swimming? On a surface, or in ventral suspension',
      note: `Limbs alternate in both. Crawling integrates at ${f.goes('crawling')}, swimming at ${f.goes('swimming')}. Swimming is observed in ventral suspension or not at all, never in water.`,
    }),
  ],
};
