/** The interval in which a response came or went: a thin line along the baseline between two visits. */
import type { CourseData } from './model.ts';

/** A lane's intervals as one path: days across, pixels down from the baseline. */
export interface LaneCourses {
  id: string;
  path: string;
}

const TICK_PX = 3;
/** Where the sides differ their lines lie one below the other. */
const STEP_PX = 2.6;

const sameSpan = (a: CourseData, b: CourseData): boolean =>
  a.event === b.event && a.from === b.from && a.to === b.to;

/** One lane's intervals, the two sides drawn as one where they agree. */
export function coursePath(courses: readonly CourseData[], unit: number): string {
  const drawn: CourseData[] = [];
  for (const course of courses) if (!drawn.some((d) => sameSpan(d, course))) drawn.push(course);
  return drawn
    .map((course, index) => {
      const level = drawn.slice(0, index).filter((d) => d.event === course.event).length;
      const y = level * STEP_PX * unit;
      const tick = TICK_PX * unit;
      const up = Math.round((y - tick) * 100) / 100;
      const at = Math.round(y * 100) / 100;
      return `M${course.from} ${up}V${at}H${course.to}V${up}`;
    })
    .join('');
}

export function coursesByLane(courses: readonly CourseData[], unit: number): LaneCourses[] {
  const ids = [...new Set(courses.map((course) => course.reflex))];
  return ids.map((id) => ({
    id,
    path: coursePath(
      courses.filter((course) => course.reflex === id),
      unit,
    ),
  }));
}
