/** The milestones that orders name; the words are those of the atlas. */
export const MILESTONE_POSES = [
  'reaching',
  'rolling',
  'sitting',
  'crawling',
  'standing',
  'walking',
] as const;
export type MilestonePose = (typeof MILESTONE_POSES)[number];

export const isMilestonePose = (id: string): id is MilestonePose =>
  (MILESTONE_POSES as readonly string[]).includes(id);
