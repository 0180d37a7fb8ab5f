/** The database's name: unmistakable, since pages opened from files share one store. */
export const DATABASE = 'tidemark-children';
