/** Every reflex and reaction, in the order of the groups. Explicit, so that a review sees what was added. */
import { absenceOf, UNLIKE_SIDES } from './weight.ts';
import { reflex as rooting } from './reflexes/rooting.ts';
import { reflex as sucking } from './reflexes/sucking.ts';
import { reflex as swallowing } from './reflexes/swallowing.ts';
import { reflex as palmarGrasp } from './reflexes/palmar-grasp.ts';
import { reflex as plantarGrasp } from './reflexes/plantar-grasp.ts';
import { reflex as moro } from './reflexes/moro.ts';
import { reflex as acousticStartle } from './reflexes/acoustic-startle.ts';
import { reflex as dollsEye } from './reflexes/dolls-eye.ts';
import { reflex as atnr } from './reflexes/atnr.ts';
import { reflex as stnr } from './reflexes/stnr.ts';
import { reflex as tlr } from './reflexes/tlr.ts';
import { reflex as galant } from './reflexes/galant.ts';
import { reflex as perez } from './reflexes/perez.ts';
import { reflex as flexorWithdrawal } from './reflexes/flexor-withdrawal.ts';
import { reflex as crossedExtension } from './reflexes/crossed-extension.ts';
import { reflex as extensorThrust } from './reflexes/extensor-thrust.ts';
import { reflex as plantarResponse } from './reflexes/plantar-response.ts';
import { reflex as traction } from './reflexes/traction.ts';
import { reflex as babkin } from './reflexes/babkin.ts';
import { reflex as snout } from './reflexes/snout.ts';
import { reflex as glabellar } from './reflexes/glabellar.ts';
import { reflex as crawling } from './reflexes/crawling.ts';
import { reflex as swimming } from './reflexes/swimming.ts';
import { reflex as positiveSupport } from './reflexes/positive-support.ts';
import { reflex as stepping } from './reflexes/stepping.ts';
import { reflex as placingLeg } from './reflexes/placing-leg.ts';
import { reflex as placingArm } from './reflexes/placing-arm.ts';
import { reflex as neckRighting } from './reflexes/neck-righting.ts';
import { reflex as bodyRightingBody } from './reflexes/body-righting-body.ts';
import { reflex as bodyRightingHead } from './reflexes/body-righting-head.ts';
import { reflex as labyrinthineRighting } from './reflexes/labyrinthine-righting.ts';
import { reflex as opticalRighting } from './reflexes/optical-righting.ts';
import { reflex as landau } from './reflexes/landau.ts';
import { reflex as amphibian } from './reflexes/amphibian.ts';
import { reflex as protectiveDownward } from './reflexes/protective-downward.ts';
import { reflex as protectiveForward } from './reflexes/protective-forward.ts';
import { reflex as protectiveSideways } from './reflexes/protective-sideways.ts';
import { reflex as protectiveBackward } from './reflexes/protective-backward.ts';
import { reflex as protectiveStepping } from './reflexes/protective-stepping.ts';
import { reflex as equilibriumProne } from './reflexes/equilibrium-prone.ts';
import { reflex as equilibriumSupine } from './reflexes/equilibrium-supine.ts';
import { reflex as equilibriumSitting } from './reflexes/equilibrium-sitting.ts';
import { reflex as equilibriumQuadruped } from './reflexes/equilibrium-quadruped.ts';
import { reflex as equilibriumStanding } from './reflexes/equilibrium-standing.ts';
import type { Reflex, ReflexData } from './types.ts';

const DESCRIBED: readonly ReflexData[] = [
  rooting,
  sucking,
  swallowing,
  palmarGrasp,
  plantarGrasp,
  moro,
  acousticStartle,
  dollsEye,
  atnr,
  stnr,
  tlr,
  galant,
  perez,
  flexorWithdrawal,
  crossedExtension,
  extensorThrust,
  plantarResponse,
  traction,
  babkin,
  snout,
  glabellar,
  crawling,
  swimming,
  positiveSupport,
  stepping,
  placingLeg,
  placingArm,
  neckRighting,
  bodyRightingBody,
  bodyRightingHead,
  labyrinthineRighting,
  opticalRighting,
  landau,
  amphibian,
  protectiveDownward,
  protectiveForward,
  protectiveSideways,
  protectiveBackward,
  protectiveStepping,
  equilibriumProne,
  equilibriumSupine,
  equilibriumSitting,
  equilibriumQuadruped,
  equilibriumStanding,
];

/** Each with how far its absence counts and when unlike sides are common. */
export const REFLEXES: readonly Reflex[] = DESCRIBED.map((reflex) => ({
  ...reflex,
  absence: absenceOf(reflex.id),
  unlikeSides: UNLIKE_SIDES[reflex.id] ?? [],
}));
