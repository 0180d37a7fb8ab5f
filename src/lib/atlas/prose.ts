/** The prose of every reflex: one module, so that it can be fetched when it is first opened. */
import { prose as rooting } from './prose/rooting.ts';
import { prose as sucking } from './prose/sucking.ts';
import { prose as swallowing } from './prose/swallowing.ts';
import { prose as palmarGrasp } from './prose/palmar-grasp.ts';
import { prose as plantarGrasp } from './prose/plantar-grasp.ts';
import { prose as moro } from './prose/moro.ts';
import { prose as acousticStartle } from './prose/acoustic-startle.ts';
import { prose as dollsEye } from './prose/dolls-eye.ts';
import { prose as atnr } from './prose/atnr.ts';
import { prose as stnr } from './prose/stnr.ts';
import { prose as tlr } from './prose/tlr.ts';
import { prose as galant } from './prose/galant.ts';
import { prose as perez } from './prose/perez.ts';
import { prose as flexorWithdrawal } from './prose/flexor-withdrawal.ts';
import { prose as crossedExtension } from './prose/crossed-extension.ts';
import { prose as extensorThrust } from './prose/extensor-thrust.ts';
import { prose as plantarResponse } from './prose/plantar-response.ts';
import { prose as traction } from './prose/traction.ts';
import { prose as babkin } from './prose/babkin.ts';
import { prose as snout } from './prose/snout.ts';
import { prose as glabellar } from './prose/glabellar.ts';
import { prose as crawling } from './prose/crawling.ts';
import { prose as swimming } from './prose/swimming.ts';
import { prose as positiveSupport } from './prose/positive-support.ts';
import { prose as stepping } from './prose/stepping.ts';
import { prose as placingLeg } from './prose/placing-leg.ts';
import { prose as placingArm } from './prose/placing-arm.ts';
import { prose as neckRighting } from './prose/neck-righting.ts';
import { prose as bodyRightingBody } from './prose/body-righting-body.ts';
import { prose as bodyRightingHead } from './prose/body-righting-head.ts';
import { prose as labyrinthineRighting } from './prose/labyrinthine-righting.ts';
import { prose as opticalRighting } from './prose/optical-righting.ts';
import { prose as landau } from './prose/landau.ts';
import { prose as amphibian } from './prose/amphibian.ts';
import { prose as protectiveDownward } from './prose/protective-downward.ts';
import { prose as protectiveForward } from './prose/protective-forward.ts';
import { prose as protectiveSideways } from './prose/protective-sideways.ts';
import { prose as protectiveBackward } from './prose/protective-backward.ts';
import { prose as protectiveStepping } from './prose/protective-stepping.ts';
import { prose as equilibriumProne } from './prose/equilibrium-prone.ts';
import { prose as equilibriumSupine } from './prose/equilibrium-supine.ts';
import { prose as equilibriumSitting } from './prose/equilibrium-sitting.ts';
import { prose as equilibriumQuadruped } from './prose/equilibrium-quadruped.ts';
import { prose as equilibriumStanding } from './prose/equilibrium-standing.ts';
import type { ReflexProse } from './types.ts';

export const PROSE: Readonly<Record<string, ReflexProse>> = {
  rooting: rooting,
  sucking: sucking,
  swallowing: swallowing,
  'palmar-grasp': palmarGrasp,
  'plantar-grasp': plantarGrasp,
  moro: moro,
  'acoustic-startle': acousticStartle,
  'dolls-eye': dollsEye,
  atnr: atnr,
  stnr: stnr,
  tlr: tlr,
  galant: galant,
  perez: perez,
  'flexor-withdrawal': flexorWithdrawal,
  'crossed-extension': crossedExtension,
  'extensor-thrust': extensorThrust,
  'plantar-response': plantarResponse,
  traction: traction,
  babkin: babkin,
  snout: snout,
  glabellar: glabellar,
  crawling: crawling,
  swimming: swimming,
  'positive-support': positiveSupport,
  stepping: stepping,
  'placing-leg': placingLeg,
  'placing-arm': placingArm,
  'neck-righting': neckRighting,
  'body-righting-body': bodyRightingBody,
  'body-righting-head': bodyRightingHead,
  'labyrinthine-righting': labyrinthineRighting,
  'optical-righting': opticalRighting,
  landau: landau,
  amphibian: amphibian,
  'protective-downward': protectiveDownward,
  'protective-forward': protectiveForward,
  'protective-sideways': protectiveSideways,
  'protective-backward': protectiveBackward,
  'protective-stepping': protectiveStepping,
  'equilibrium-prone': equilibriumProne,
  'equilibrium-supine': equilibriumSupine,
  'equilibrium-sitting': equilibriumSitting,
  'equilibrium-quadruped': equilibriumQuadruped,
  'equilibrium-standing': equilibriumStanding,
};
