/**
 * English for the family's page. Read by people who are tired and frightened, and for whom English
 * may be a second language: short sentences, everyday words, no verdicts, no blame, no promise.
 * Places in braces are told in words/family.ts.
 */
import type { AboutAge, ChildPlaces, FamilyWords, Who } from '../family.ts';

const PRONOUN = {
  she: { they: 'she', them: 'her', their: 'her' },
  he: { they: 'he', them: 'him', their: 'his' },
  they: { they: 'they', them: 'them', their: 'their' },
} as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function child({ calledName, pronoun }: Who): ChildPlaces {
  const name = calledName || 'your baby';
  const names = `${name}’s`;
  const said = pronoun === 'name' ? { they: name, them: name, their: names } : PRONOUN[pronoun];
  return {
    name,
    Name: capital(name),
    names,
    Names: capital(names),
    ...said,
    They: capital(said.they),
    Their: capital(said.their),
  };
}

const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

const ofUnit = (n: number, unit: AboutAge['unit']): string => counted(n, unit.slice(0, -1));

/** An age with the day it is counted from, where that has to be said. */
function placed({ unit, count, clock }: AboutAge): string {
  const origin = clock === 'due' ? 'the due date' : 'birth';
  if (count === 0) return origin;
  const span = ofUnit(Math.abs(count), unit);
  if (count < 0) return `${span} before ${origin}`;
  return clock === 'age' ? span : `${span} after ${origin}`;
}

const aboutPlaced = (age: AboutAge): string => `${age.count === 0 ? '' : 'about '}${placed(age)}`;

export const family: FamilyWords = {
  tag: 'en-GB',
  ownName: 'English',
  child,
  title: { visit: 'About {names} visit', course: 'About {names} visits so far' },
  headings: {
    who: 'How old {name} is',
    looked: 'What we looked at',
    talk: 'What we still want to talk about',
    today: 'What we think',
    next: 'What happens next',
    help: 'How you can help',
    call: 'When to call us',
    urgent: 'Call right away',
    clinic: 'Your clinic',
    caution: 'About this page',
  },
  meantThen: 'What it meant that day',
  thoughtThen: 'What we thought that day',
  labels: {
    did: 'What we did',
    saw: 'What we saw',
    means: 'What it means today',
    next: 'What comes next',
    clinic: 'Clinic',
    phone: 'Phone',
    chart: '{Names} picture so far',
    edited: 'Written by your clinic',
    write: 'Room for notes and questions',
    invented: 'An invented example. This is not a real baby.',
  },
  sentences: {
    'who.born': '{Name} was born on {date}.',
    'who.born-early': 'That was {span} before the due date. The due date was {date}.',
    'who.age': 'On that day, {name} was {age} old.',
    'who.age-birth': 'Counted from birth, {name} was {age} old on that day.',
    'who.age-due': 'Counted from the due date, {they} would be {age} old.',
    'who.age-before-due': 'The due date was still {age} away.',
    'who.age-at-due': 'That day was the due date.',
    'who.why':
      'Here we count from the due date. Babies who come early still need those weeks to grow.',
    'who.past': '{Name} came early. By now, we count from birth.',
    'who.doubt':
      'The due date may be off by up to {span}. So the ages and dates here may shift by as much.',
    'who.seen': 'We saw {name} on {date}.',
    'who.course': 'We saw {name} {times}, the first time on {from} and the last on {to}.',
    'who.newer':
      'You have been here again since then. This page does not tell you about that. Please ask us.',
    'looked.intro':
      'Babies make some moves without thinking. These come and go as a baby grows. We looked at some of them.',
    'looked.nothing': 'We have not looked at anything yet.',
    'looked.few': 'We could only check a few things. So this page cannot tell you much yet.',
    'looked.more':
      'We looked at more than we show here. Ask us if you want to know about the rest.',
    'looked.few-more':
      'There is a bit more than we show here. Ask us if you want to know about it.',
    'talk.intro': 'We also want to talk with you about:',
    'today.talk':
      'There are things we want to talk with you about: there can be many reasons for them, and we do not know yet what they mean.',
    'today.doctor': 'A doctor should see {name} today, and we will tell you where to go.',
    'today.watch': 'There are things we want to look at again, and they may turn out to be fine.',
    'today.fits': 'What we saw is what we expect at this age.',
    'today.fits-open': 'What we saw may be what we expect at this age.',
    'today.fits-so-far':
      'What we could check is what we expect at this age, and there are things we can’t tell yet.',
    'today.fits-so-far-open':
      'What we could check may be what we expect at this age, and there are things we can’t tell yet.',
    'today.cannot-tell': 'We can’t tell yet, so we need to look again.',
    'next.doctor': 'First, a doctor sees {name}.',
    'next.team': 'We talk about it in our team, and then with you.',
    'next.visit': 'Our next visit is on {date}.',
    'next.by': 'We want to see {name} again by {date}.',
    'next.due': 'It is time for our next visit. Please call us this week, and we will set a day.',
    'next.none': 'We have not planned another visit. If you have a question, call us at any time.',
    'help.no-practice':
      'None of this needs practice. Please do not try to bring it out at home. It is not a test that you or {name} can fail.',
    'help.daily': 'Hold {name}, talk, sing and play as you do each day. This helps.',
    'help.tummy':
      'When {name} is awake, let {them} lie on the tummy for a while. Stay close and watch {them}.',
    'help.floor': 'Let {name} move and play on a safe floor, with you close by.',
    'help.sleep': 'Always lay {name} on the back to sleep.',
    'help.sleep-home': 'At home, always lay {name} on the back to sleep.',
    'help.pace': 'You see {name} every day. Tell us what you notice.',
    'call.any': 'Call us if you have a question or a worry. No worry is too small.',
    'call.ask': 'Call us if {name} moves in a new way that you do not understand.',
    'urgent.intro': 'Call us right away if you see one of these:',
    'urgent.skills':
      '{Name} can no longer do something {they} had learned, such as look at you, hold up the head or reach.',
    'urgent.feeding': '{Name} does not feed well, chokes a lot, or does not want to feed.',
    'urgent.tone': '{Names} body feels very floppy or very stiff.',
    'urgent.fit': '{Name} has a fit. That can be shaking or a stare that you cannot stop.',
    'urgent.spasms':
      '{Names} arms fling out, or the head or body bends, for a second or two, again and again. Nothing sets it off. It often comes on waking. It can look like a startle. If you can, film it for us.',
    'urgent.side': 'One arm, one leg or one side does not move, or moves much less.',
    'urgent.number':
      'Call the emergency number if {name} has a first fit, or a fit that does not stop. Do the same if {they} cannot breathe well or will not wake up, or if you cannot reach us.',
    'caution.instead':
      'This page does not replace what your clinic tells you. If the two do not match, trust your clinic.',
    'caution.guides':
      'Our guides are books and studies about when babies do these things. They do not all agree.',
    'caution.limits':
      'It says what we looked at. It cannot name an illness, and it cannot rule one out.',
  },
  aboutReflex: {
    when: 'We last looked at this on {date}.',
    since: 'We have not looked at it since.',
    other: 'We want to look at this once more before we tell you what we saw.',
    tried: 'We tried again on {date}, but could not tell.',
    came: 'On {from} it was not there yet. On {to} we saw it.',
    went: 'On {from} it was there. On {to} we did not see it any more.',
    talk: '{reflex}',
    'goes-by': 'It may take until {date} to fade, {when}.',
    'goes-between':
      'Many of our guides expect it to have faded by {from}, and the last of them by {to}, {when}.',
    'goes-later': 'Later on, it may fade, {when}. That may take until {date}.',
    'comes-by': 'It may take until {date} to come, {when}.',
    'comes-between': 'It may come between {from} and {to}, {when}.',
    'why-talk': 'We want to talk with you about this.',
    'look-again': 'We want to look at this again when we next meet.',
    'no-date': 'There is no fixed date for this to change.',
    'soon-by': 'Soon we may look at this: {reflex}. It may take until {date} to come, {when}.',
  },
  ownReflex: { name: '{reflex}', did: 'We looked at how {name} moved.' },
  saw: {
    'not-elicited': {
      one: 'We did not see it.',
      both: 'We did not see it on either side.',
      side: 'On the {side}, we did not see it.',
    },
    weak: {
      one: 'We saw it, but it was faint.',
      both: 'We saw it on both sides, but it was faint.',
      side: 'On the {side}, we saw it, but it was faint.',
    },
    elicited: {
      one: 'We saw it.',
      both: 'We saw it on both sides.',
      side: 'On the {side}, we saw it.',
    },
    brisk: {
      one: 'We saw it, and it was quick and strong.',
      both: 'We saw it on both sides, and it was quick and strong.',
      side: 'On the {side}, we saw it, and it was quick and strong.',
    },
    obligatory: {
      one: 'We saw it. It was hard for {name} to move out of it.',
      both: 'We saw it on both sides. It was hard for {name} to move out of it.',
      side: 'On the {side}, we saw it. It was hard for {name} to move out of it.',
    },
    'not-assessable': {
      one: 'We could not check it this time.',
      both: 'We could not check it this time.',
      side: 'On the {side}, we could not check it.',
    },
    'not-counted': {
      one: 'We did not see it. But {name} was {state}, so that does not count.',
      both: 'We did not see it. But {name} was {state}, so that does not count.',
      side: 'On the {side}, we did not see it. But {name} was {state}, so that does not count.',
    },
  },
  sides: { left: 'left', right: 'right', midline: 'middle' },
  states: {
    'quiet-sleep': 'asleep',
    'active-sleep': 'asleep',
    drowsy: 'sleepy',
    'quiet-alert': 'awake',
    'active-alert': 'awake',
    crying: 'crying',
    'not-recorded': 'awake',
  },
  means: {
    'talk-held': {
      firm: `{Name} could not easily move out of this. At any age, we take a closer look then.`,
      open: `{Name} could not easily move out of this. At any age, we take a closer look then.`,
    },
    'talk-returned': {
      firm: `It had gone, and {now} it {is} there again.`,
      open: `It had gone, and {now} it {is} there again.`,
      oneSide: {
        firm: 'It had gone. On the {side}, it {is} there again.',
        open: 'It had gone. On the {side}, it {is} there again.',
      },
    },
    'talk-sides': {
      firm: `The two sides did not do the same. At {age}, we expect them to be alike.`,
      open: `The two sides did not do the same. At {age}, we would think they are alike.`,
    },
    'talk-still-there': {
      firm: `It {is} still there. At {age}, we expect it to have faded.`,
      open: 'It {is} still there. {By}, some of our guides expect it to have faded, and others do not.',
      oneSide: {
        firm: 'On the {side}, it {is} still there. At {age}, we expect it to have faded.',
        open: 'On the {side}, it {is} still there. {By}, some of our guides expect it to have faded, and others do not.',
      },
      ofFeeding: {
        firm: 'It {is} still there. At {age}, we expect babies to feed without it.',
        open: 'It {is} still there. {By}, some of our guides expect babies to feed without it, and others do not.',
        oneSide: {
          firm: 'On the {side}, it {is} still there. At {age}, we expect babies to feed without it.',
          open: 'On the {side}, it {is} still there. {By}, some of our guides expect babies to feed without it, and others do not.',
        },
      },
    },
    'talk-not-seen': {
      firm: 'At {age}, we expect to see it.',
      open: '{By}, some of our guides expect to see it, and others do not.',
    },
    'talk-gone': {
      firm: 'It was there before. At {age}, we still expect to see it.',
      open: 'It was there before. {By}, some of our guides still expect to see it, and others do not.',
      oneSide: {
        firm: 'On the {side}, it was there before. At {age}, we still expect to see it.',
        open: 'On the {side}, it was there before. {By}, some of our guides still expect to see it, and others do not.',
      },
    },
    'talk-lost': {
      firm: 'We saw it before, and this time we did not. We want to look again.',
      open: 'We saw it before, and this time we did not. We want to look again.',
      oneSide: {
        firm: 'On the {side}, we saw it before, and this time we did not. We want to look again.',
        open: 'On the {side}, we saw it before, and this time we did not. We want to look again.',
      },
    },
    'watch-sides': {
      firm: 'The two sides were not quite alike.',
      open: 'The two sides were not quite alike.',
    },
    'watch-sides-common': {
      firm: 'The two sides were not quite alike. In many babies this is so.',
      open: 'The two sides were not quite alike. In many babies this is so.',
    },
    'watch-faint': {
      firm: 'It was faint. At {age}, it is often more clear.',
      open: 'It was faint. At {age}, it may be more clear.',
      oneSide: {
        firm: 'On the {side}, it was faint. At {age}, it is often more clear.',
        open: 'On the {side}, it was faint. At {age}, it may be more clear.',
      },
    },
    'watch-strong': {
      firm: 'It was strong. By itself this tells us little.',
      open: 'It was strong. By itself this tells us little.',
      oneSide: {
        firm: 'On the {side}, it was strong. By itself this tells us little.',
        open: 'On the {side}, it was strong. By itself this tells us little.',
      },
    },
    'watch-still-there': {
      firm: 'It {is} still there. About {now}, we expect it to fade.',
      open: 'It {is} still there. It {maybe} time for it to fade.',
      oneSide: {
        firm: 'On the {side}, it {is} still there. About {now}, we expect it to fade.',
        open: 'On the {side}, it {is} still there. It {maybe} time for it to fade.',
      },
      ofFeeding: {
        firm: 'It {is} still there. About {now}, we expect babies to begin to feed without it.',
        open: 'It {is} still there. Babies may begin about {now} to feed without it.',
        oneSide: {
          firm: 'On the {side}, it {is} still there. About {now}, we expect babies to begin to feed without it.',
          open: 'On the {side}, it {is} still there. Babies may begin about {now} to feed without it.',
        },
      },
    },
    'watch-not-seen': {
      firm: 'About {now}, we expect to see it.',
      open: 'It {maybe} time for it to be there.',
    },
    'watch-may-lack': {
      firm: 'We did not see it. Some healthy babies do not show it.',
      open: 'We did not see it. Some healthy babies do not show it.',
    },
    'watch-gone': {
      firm: 'It was there before. At {age}, we may still see it.',
      open: 'It was there before. Some of our guides expect to see it for longer, and others do not.',
      oneSide: {
        firm: 'On the {side}, it was there before. At {age}, we may still see it.',
        open: 'On the {side}, it was there before. Some of our guides expect to see it for longer, and others do not.',
      },
    },
    'watch-lost': {
      firm: 'We saw it before, and this time we did not. We want to look again.',
      open: 'We saw it before, and this time we did not. We want to look again.',
      oneSide: {
        firm: 'On the {side}, we saw it before, and this time we did not. We want to look again.',
        open: 'On the {side}, we saw it before, and this time we did not. We want to look again.',
      },
    },
    'watch-again': {
      firm: 'One try is not enough to tell. We want to try again.',
      open: 'One try is not enough to tell. We want to try again.',
    },
    'watch-soon': {
      firm: 'It came sooner than we expect. By itself this tells us little.',
      open: 'It may have come sooner than we expect.',
    },
    there: {
      firm: 'This is what we expect at {age}.',
      open: 'This may be what we expect at {age}.',
    },
    away: {
      firm: 'This is what we expect at {age}.',
      open: 'This may be what we expect at {age}.',
    },
    fading: {
      firm: 'At {age}, it fades bit by bit. That takes time.',
      open: 'Some of our guides say it fades at {age}. Others do not.',
      ofFeeding: {
        firm: 'At {age}, babies learn bit by bit to feed without it.',
        open: 'Some of our guides say that babies feed without it at {age}. Others do not.',
      },
    },
    'may-come': {
      firm: 'At {age}, it still has time to come.',
      open: 'At {age}, it may still come.',
    },
    'gone-may-come': {
      firm: 'It was there before. At {age}, it does not have to be there yet.',
      open: 'It was there before. At {age}, it may not have to be there yet.',
    },
    soon: {
      firm: 'It {is} there a bit sooner than we expect. By itself this tells us little.',
      open: 'It {maybe} there a bit sooner than we expect.',
    },
    'cannot-tell-state': {
      firm: 'We can’t tell yet. We need to look when {name} is calm and awake.',
      open: 'We can’t tell yet. We need to look when {name} is calm and awake.',
    },
    'cannot-tell-tried': {
      firm: 'We can’t tell yet. We will try again.',
      open: 'We can’t tell yet. We will try again.',
    },
    'cannot-tell-silent': {
      firm: 'We can’t tell yet. Our guides say little about {age}.',
      open: 'We can’t tell yet. Our guides say little about {age}.',
    },
  },
  tense: {
    now: { age: 'this age', By: 'By now', now: 'now', is: 'is', maybe: 'may be' },
    then: { age: 'that age', By: 'By then', now: 'then', is: 'was', maybe: 'may have been' },
  },
  reflexes: {
    'acoustic-startle': {
      name: 'the jump at a loud sound (startle)',
      did: 'We made one short sound out of sight. We looked for a blink and a quick jump.',
    },
    amphibian: {
      name: 'bending one side to creep (amphibian)',
      did: 'With {name} on the tummy, we lifted one hip. We looked to see if the knee and arm on that side bent.',
    },
    atnr: {
      name: 'one arm out as the head turns (tonic neck)',
      did: 'We turned {names} head to one side. We looked to see if the arm on that side went straight and the other one bent.',
    },
    babkin: {
      name: 'the mouth opening as the palms are pressed (Babkin)',
      did: 'We pressed both palms. We looked to see if the mouth opened.',
    },
    'body-righting-body': {
      name: 'rolling part by part (body righting)',
      did: 'We helped {name} start to roll. We looked to see if hips, chest and head came round one by one.',
    },
    'body-righting-head': {
      name: 'lifting the head off the mat (body righting, head)',
      did: 'We laid {name} on a mat. We looked to see if the head came up.',
    },
    crawling: {
      name: 'the push of a foot to creep (crawling)',
      did: 'With {name} on the tummy, we held a hand against the feet. We looked for a push to creep.',
    },
    'crossed-extension': {
      name: 'the other leg going straight (crossed extension)',
      did: 'We held one leg and rubbed that foot. We looked to see if the other leg bent and then went straight.',
    },
    'dolls-eye': {
      name: 'the eyes staying behind as the head turns (doll’s eye)',
      did: 'We turned {names} head to one side. We looked to see if the eyes stayed behind for a moment.',
    },
    'equilibrium-prone': {
      name: 'keeping steady on the tummy (tilting)',
      did: 'We tipped the mat with {name} on the tummy. We looked to see if {their} back and head moved to keep steady.',
    },
    'equilibrium-quadruped': {
      name: 'keeping steady on hands and knees (tilting)',
      did: 'We tipped the mat with {name} on hands and knees. We looked to see if {their} back and head moved to keep steady.',
    },
    'equilibrium-sitting': {
      name: 'keeping steady while sitting (tilting)',
      did: 'We tipped the seat a bit. We looked to see if {names} back and head moved to keep steady.',
    },
    'equilibrium-standing': {
      name: 'keeping steady while standing (tilting)',
      did: 'We tipped the floor a bit. We looked to see if {names} legs, arms and head moved to keep steady.',
    },
    'equilibrium-supine': {
      name: 'keeping steady on the back (tilting)',
      did: 'We tipped the mat with {name} on the back. We looked to see if {their} back and head moved to keep steady.',
    },
    'extensor-thrust': {
      name: 'the bent leg kicking straight (thrust)',
      did: 'We touched the foot of a bent leg. We looked to see if the leg went straight all at once.',
    },
    'flexor-withdrawal': {
      name: 'pulling the foot away (withdrawal)',
      did: 'We gave the foot a quick touch. We looked to see if {name} pulled the leg away.',
    },
    galant: {
      name: 'the curve of the back when it is stroked (Galant)',
      did: 'We stroked down one side of {names} back. We looked to see if the hips swung to that side.',
    },
    glabellar: {
      name: 'the blink at a tap on the brow (glabellar tap)',
      did: 'We tapped {name} between the brows. We looked for a short blink.',
    },
    'labyrinthine-righting': {
      name: 'keeping the head up with eyes covered (labyrinthine)',
      did: 'We tipped {name} to one side with the eyes covered. We looked to see if the head came back up.',
    },
    landau: {
      name: 'the flying pose (Landau)',
      did: 'We held {name} in the air, face down. We looked to see if the head, back and legs came up.',
    },
    moro: {
      name: 'the startle to a falling feeling (Moro)',
      did: 'We let {names} head drop a tiny bit and caught it. We looked to see if both arms spread and came back.',
    },
    'neck-righting': {
      name: 'rolling like a log as the head turns (neck righting)',
      did: 'We turned {names} head to one side. We looked to see if the whole body came along as one.',
    },
    'optical-righting': {
      name: 'keeping the head up by sight (optical)',
      did: 'We tipped {name} to one side. We looked to see if the head came back up.',
    },
    'palmar-grasp': {
      name: 'the grip of the hand (palmar grasp)',
      did: 'We laid a finger in {names} palm. We looked to see if the hand closed on it.',
    },
    perez: {
      name: 'the arch when the spine is stroked (Perez)',
      did: 'We stroked up {names} spine. We looked to see if the head came up and the back bent.',
    },
    'placing-arm': {
      name: 'putting a hand on the table (placing, arms)',
      did: 'We let the back of {names} hand touch an edge. We looked to see if the hand came up and on top.',
    },
    'placing-leg': {
      name: 'putting a foot on the table (placing, legs)',
      did: 'We let the top of {names} foot touch an edge. We looked to see if the foot came up and on top.',
    },
    'plantar-grasp': {
      name: 'the curl of the toes (plantar grasp)',
      did: 'We pressed the ball of the foot with a thumb. We looked to see if the toes curled down.',
    },
    'plantar-response': {
      name: 'the big toe going up (plantar response)',
      did: 'We stroked the sole of the foot. We looked to see if the big toe went up.',
    },
    'positive-support': {
      name: 'legs that take weight (positive support)',
      did: 'We held {name} up with the feet on a table. We looked to see if the legs went straight to take some weight.',
    },
    'protective-backward': {
      name: 'hands to catch a fall back (protective, back)',
      did: 'While {name} sat, we gave a push back. We looked to see if a hand reached back.',
    },
    'protective-downward': {
      name: 'legs out to land (protective, down)',
      did: 'We held {name} up and moved {them} down a bit fast. We looked to see if the legs spread to land.',
    },
    'protective-forward': {
      name: 'hands out to break a fall (protective, front)',
      did: 'We tipped {name} forward. We looked to see if both arms reached out.',
    },
    'protective-sideways': {
      name: 'a hand out to the side (protective, side)',
      did: 'While {name} sat, we gave a push to the side. We looked to see if a hand reached out.',
    },
    'protective-stepping': {
      name: 'a step to stay up (protective stepping)',
      did: 'While {name} stood, we gave a small push. We looked to see if a foot stepped out.',
    },
    rooting: {
      name: 'turning to a touch on the cheek (rooting)',
      did: 'We stroked {names} cheek by the mouth. We looked to see if the head turned and the mouth opened.',
    },
    snout: {
      name: 'the pout at a tap on the lips (snout)',
      did: 'We tapped {names} lips. We looked to see if the lips came to a pout.',
    },
    stepping: {
      name: 'steps when held up (stepping)',
      did: 'We held {name} up with the feet on a table. We looked for steps, as if to walk.',
    },
    stnr: {
      name: 'arms and legs moving with a nod (tonic neck, both sides)',
      did: 'We bent {names} head down and then up. We looked to see if the arms and legs bent in turn.',
    },
    sucking: {
      name: 'sucking that starts by itself (sucking)',
      did: 'We put a clean finger in {names} mouth. We looked to see if sucking started by itself.',
    },
    swallowing: {
      name: 'swallowing',
      did: 'We watched {name} feed. We looked to see if each suck ended in a swallow with no cough.',
    },
    swimming: {
      name: 'paddling in water (swimming)',
      did: 'This is about how babies move in water. We do not test it, and you should not try it.',
    },
    tlr: {
      name: 'curling up or going stiff with the head (tonic labyrinthine)',
      did: 'We laid {name} on the tummy and on the back. We looked to see if the body curled up or went straight.',
    },
    traction: {
      name: 'helping to sit up (traction)',
      did: 'We held {names} arms and drew {them} up to sit. We looked to see if both arms bent and helped.',
    },
  },
  span({ unit, months, weeks, days }) {
    if (unit === 'months')
      return weeks > 3
        ? `almost ${counted(months + 1, 'month')}`
        : weeks > 0
          ? `${counted(months, 'month')} and ${counted(weeks, 'week')}`
          : counted(months, 'month');
    if (weeks === 0) return days === 0 ? 'less than 1 day' : counted(days, 'day');
    return days > 0
      ? `${counted(weeks, 'week')} and ${counted(days, 'day')}`
      : counted(weeks, 'week');
  },
  when(from, to) {
    if (from.count === to.count && from.unit === to.unit && from.clock === to.clock)
      return to.count > 0
        ? `at about ${placed(to)}`
        : `${to.count === 0 ? 'around' : 'about'} ${placed(to)}`;
    if (from.clock === 'due' && from.count === 0)
      return `between the due date and about ${ofUnit(to.count, to.unit)} after it`;
    if (from.count <= 0 || from.clock !== to.clock)
      return `between ${aboutPlaced(from)} and ${aboutPlaced(to)}`;
    const first = from.unit === to.unit ? String(from.count) : ofUnit(from.count, from.unit);
    return `at about ${first} to ${placed(to)}`;
  },
  times: (count) => counted(count, 'time'),
  show: {
    next: 'Next',
    back: 'Back',
    close: 'Close',
    aloud: 'Read aloud',
    quiet: 'Stop reading',
    shows: 'This is what we looked for.',
    move: 'Show it move',
    hold: 'Hold it still',
    full: 'Whole screen',
    of: (at, all) => `${at} of ${all}`,
  },
  chart: {
    birth: 'birth',
    due: 'due date',
    months: (months) => counted(months, 'month'),
    today: 'this visit',
    last: 'last visit',
    shape: 'the shape: when our guides expect it',
    marks: {
      there: 'there',
      away: 'not there',
      'one-side': 'one side',
      'cannot-tell': 'can’t tell',
    },
    fromBirth: 'Our guides expect this from birth on.',
    byDue: 'Our guides expect this by the due date.',
    comes: 'Our guides expect this to come {when}.',
    comesUnsaid: 'Our guides do not say when this comes.',
    thenFades: 'They expect it to fade {when}.',
    thenFeeds: 'They expect babies to feed without it {when}.',
    thenStays: 'They expect it to stay for years.',
    bandNone: 'Our guides say little about when this comes and goes.',
    seen: '{date}: {mark}.',
  },
};
