/** English for a new version, and for taking Tidemark along. */

export const line = {
  ready: 'A new version of Tidemark is ready.',
  use: 'Use it now',
  later: 'Later',
  replaced:
    'Another window uses a new version of Tidemark. This page continues with the previous one.',
  reload: 'Reload the page',
  lacking:
    'A part of this page could not be loaded: Tidemark was updated meanwhile, or there is no network. Saved records stay saved.',
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
  help: 'Tidemark was updated meanwhile, or there is no network. Your records are safe. Reload the page to continue.',
};
