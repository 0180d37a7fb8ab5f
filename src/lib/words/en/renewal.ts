/** English for a new version, and for carrying Tidemark about. */

export const line = {
  ready: 'A new version of Tidemark is ready.',
  use: 'Use it now',
  later: 'Later',
  replaced: 'Another window uses a new version of Tidemark. This page goes on with the one before.',
  reload: 'Load the page anew',
  lacking:
    'A part of this page could not be loaded: Tidemark was renewed meanwhile, or there is no network. What is kept stays kept.',
};

export const about = {
  title: 'Version',
  version: (name: string): string => `This is version ${name}.`,
  ready:
    'A new version is ready. It is used when every window of Tidemark has been closed, or now.',
  file: 'Tidemark in one file',
  fileHelp:
    'It opens from a memory stick, with no server and no network. What is entered there stays in the browser of the machine it is opened on.',
};

export const lacking = {
  title: 'This page could not be loaded.',
  help: 'Tidemark was renewed meanwhile, or there is no network. Your records are kept. Load the page anew to go on.',
};
