/** The database's name: unmistakable, since pages opened from files share one store. */
export const DATABASE = 'tidemark-children';

/** The tables whose entries go into a backup. */
export const BACKUP_TABLES = ['cases', 'own', 'talks'] as const;
