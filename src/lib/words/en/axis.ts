/** English for the empty axis. */
export const axisPage = { title: 'The empty axis' };
