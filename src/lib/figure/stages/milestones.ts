/** An infant doing what a motor milestone asks for: one pose each, seen from where it is told best. */
import type { Change } from '../change.ts';
import type { MilestonePose } from '../milestonePoses.ts';
import type { Stage } from '../stage.ts';
import { FACING_RIGHT, fromTheSide } from './from-side.ts';

const still = (rest: Change, more: Partial<Stage> = {}): Stage => ({
  ...fromTheSide,
  setting: 'upright',
  rest,
  ...more,
});

export const MILESTONES: Readonly<Record<MilestonePose, Stage>> = {
  reaching: still(
    {
      placing: { yaw: FACING_RIGHT, pitch: -90 },
      axial: { neckFlex: 14, trunkFlex: 4 },
      armL: { shoulderFlex: 52, shoulderOut: 24, elbow: 64, grip: 0.4 },
      armR: { shoulderFlex: 96, shoulderOut: 8, elbow: 8, grip: 0, spread: 0.7 },
      legs: { hipFlex: 88, hipOut: 22, hipTurn: 16, knee: 82 },
    },
    { setting: 'lying', resting: 'head-and-seat' },
  ),
  rolling: still(
    {
      placing: { yaw: FACING_RIGHT, pitch: -90, roll: -52 },
      axial: { neckFlex: -14, neckYaw: 24, trunkTwist: -14 },
      armL: { shoulderFlex: 70, shoulderOut: 4, elbow: 30, grip: 0.1, spread: 0.5 },
      armR: { shoulderFlex: 60, shoulderOut: 6, elbow: 40, grip: 0.3 },
      legL: { hipFlex: 84, hipOut: -10, knee: 70, ankle: 0 },
      legR: { hipFlex: 20, hipOut: 8, knee: 26, ankle: -16 },
    },
    { setting: 'lying' },
  ),
  sitting: still(
    {
      placing: { yaw: FACING_RIGHT, pitch: 2 },
      axial: { trunkFlex: 6, neckFlex: -6 },
      armL: { shoulderFlex: 46, shoulderOut: 16, elbow: 52, grip: 0.6 },
      armR: { shoulderFlex: 58, shoulderOut: 14, elbow: 44, grip: 0.6 },
      legs: { hipFlex: 86, hipOut: 26, hipTurn: 20, knee: 20, ankle: 4 },
    },
    { resting: 'seat' },
  ),
  crawling: still(
    {
      placing: { yaw: FACING_RIGHT, pitch: 82 },
      axial: { neckFlex: -40, trunkFlex: 2 },
      armL: { shoulderFlex: 68 },
      armR: { shoulderFlex: 106 },
      arms: {
        shoulderOut: 8,
        elbow: 8,
        forearmTurn: -82,
        wrist: -84,
        grip: 0.05,
        spread: 0.5,
      },
      legL: { hipFlex: 108, knee: 96 },
      legR: { hipFlex: 68, knee: 84 },
      legs: { hipOut: 8, hipTurn: 0, ankle: -52 },
    },
    { setting: 'quadruped', resting: 'hands-and-knees' },
  ),
  standing: still({
    axial: { neckFlex: -4 },
    arms: { shoulderFlex: 12, shoulderOut: 46, shoulderTurn: 20, elbow: 54, grip: 0.3 },
    legs: { hipFlex: 4, hipOut: 16, hipTurn: 12, knee: 6, ankle: 2 },
  }),
  walking: still({
    placing: { yaw: FACING_RIGHT, pitch: 6 },
    axial: { neckFlex: -8 },
    armL: { shoulderFlex: 58, shoulderOut: 34, elbow: 76, grip: 0.3 },
    armR: { shoulderFlex: 40, shoulderOut: 38, elbow: 88, grip: 0.3 },
    legL: { hipFlex: 40, hipOut: 8, knee: 22, ankle: 8 },
    legR: { hipFlex: -20, hipOut: 8, knee: 12, ankle: -26 },
  }),
};
