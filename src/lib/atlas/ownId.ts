/** The id of what is one's own never meets one of the atlas: built-in ids have no such prefix. */
export const OWN_PREFIX = 'own-';
