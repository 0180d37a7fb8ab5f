/** Names under which the browser keeps what stands beside the records and goes into a backup. */
export const SETTINGS = 'tidemark-settings';
export const QUESTIONS = 'tidemark-questions';
export const SHEETS = 'tidemark-sheets';
