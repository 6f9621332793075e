import { join } from 'node:path';

/** Recent list, drafts and window place, apart from what the browser engine keeps in the same folder. */
export const stateFolder = (programFolder: string): string => join(programFolder, 'state');
