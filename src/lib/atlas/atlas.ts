/** The whole atlas: what is judged by, and what stands beside it. A page has the core first, and fetches the rest. */
import { faultless } from './check.ts';
import { buildAtlas, CORE_PARTS, type Atlas } from './core.ts';
import { withFurther } from './further.ts';
import type { AtlasParts } from './types.ts';

export * from './core.ts';

/** What Tidemark knows by itself. */
export const ATLAS_PARTS: AtlasParts = withFurther(CORE_PARTS);

export const ATLAS: Atlas = buildAtlas(faultless(ATLAS_PARTS));
